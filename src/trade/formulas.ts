import { type Formula, type Ground, ground, type Known } from './formula.ts';
import { STRENGTH_FORMULAS } from './strengthFormulas.ts';

const PAPER =
  'Anderson & Beausoleil, “Classical guitar intonation and compensation”, J. Acoust. Soc. Am. 156(1), 683 (2024)';

/** Every formula in use. The ids stand in the docstrings of the functions that work them out. */
export const FORMULAS = {
  S1: {
    name: 'Note to frequency',
    text: 'f = A·2^((m − 69)/12), m the note’s number, A that of A4',
    grounds: [
      ground('derived', 'equal temperament'),
      ground('memory', 'that ISO 16 sets A to 440 Hz; the design says which A is used'),
    ],
  },
  S2: {
    name: 'Tension',
    text: 'T = μ·(2·L·f)², μ mass per length, L the scale length, f the open string’s frequency',
    grounds: [ground('read', `${PAPER}, string tables`)],
  },
  S4: {
    name: 'Mass of a plain string',
    text: 'μ = ρ·π·d²/4, ρ 7850 kg/m³',
    grounds: [
      ground('derived', 'the formula'),
      ground('memory', 'ρ 7850'),
      ground('quoted', '7800 in a materials database'),
    ],
  },
  S5: {
    name: 'Mass and stress of a wound string',
    text: 'μ = ρₛ·π·d²/4 + (π/4)·ρ_w·π·(D² − d²)/4: a round wrap that touches on a round core of diameter d fills π/4; stress = T/(π·d²/4)',
    grounds: [
      ground('derived', 'the formula'),
      ground('memory', 'the density of bronze, 8800 kg/m³'),
      ground(
        'read',
        'Zollner, “Physics of the Electric Guitar”, §1.2, an extract: the core sets the stiffness, and string steel is stressed up to 2,000 N/mm²',
      ),
    ],
  },
  S7: {
    name: 'Inharmonicity',
    text: 'fₙ = n·f₀·√(1 + B·n²), B = π³·E·d⁴/(64·T·L²), d the core’s diameter',
    grounds: [ground('quoted', 'Fletcher, J. Acoust. Soc. Am. 36, 203 (1964)')],
  },
  I1: {
    name: 'Place of a fret',
    text: 'xₙ = S·(1 − 2^(−n/12)) from the nut, S the scale length',
    grounds: [ground('derived', 'equal temperament')],
  },
  I2: {
    name: 'Error of a fretted note',
    text: 'cents = K·ln(L₀/(g·Lₙ)) + (K/2)·ln(1 + Q) + (K/2)·ln(1 + κQ) + K·ln(F(Bₙ)/F(B₀)): length, mass spread on the longer path, tension added by pressing, stiffness; g = 2^(n/12), K = 1200/ln 2, Q = (Lₙ + Lₙ′ − L₀)/L₀, κ = E·A/T, F(B) = 1 + αB + c₂B²',
    grounds: [ground('read', PAPER)],
  },
  I3: {
    name: 'Heights at nut and saddle',
    text: 'h₀ = (c₁ − 2·a₁₂·r)/(1 − 2r), hₛ = 2·a₁₂ − h₀, r = 1 − 2^(−1/12), c₁ over the 1st fret, a₁₂ over the 12th',
    grounds: [ground('derived', 'an open string is straight, and the 12th fret lies half way')],
  },
  I4: {
    name: 'Place of the slot',
    text: 'each string’s set-back solves the error of a fretted note; the slot is the straight line that suits all set-backs best; a crown can be filed from it by half the width less what stays beside it',
    grounds: [
      ground('derived', 'set-backs and line'),
      ground(
        'practice',
        'α = 2, fitted to slots of 2.5–3.5° with 2–3 mm of set-back at the treble and 5–6 at the bass',
      ),
    ],
  },
  B2: {
    name: 'Load on the saddle',
    text: '2·T·sin(β/2), β the break angle',
    grounds: [ground('derived', 'a string without friction')],
  },
  B3: {
    name: 'Load down and forward',
    text: 'V = T·(sin t₁ + sin t₂), H = T·(cos t₁ − cos t₂) toward the nut, t₁ and t₂ the string’s slopes in front and behind',
    grounds: [ground('derived', 'a string without friction')],
  },
  B4: {
    name: 'Break angle',
    text: 'atan(rise/run) behind, from the crown to where the string first touches wood, + its slope in front',
    grounds: [ground('derived', 'plane geometry')],
  },
  sagitta: {
    name: 'Sagitta',
    text: 's = R − √(R² − c²/4), the height of an arc of radius R over its chord c',
    grounds: [ground('derived', 'plane geometry')],
  },
  'frets-plane': {
    name: 'Frets’ plane over the soundboard',
    text: 'p = z_b + (S − x_b)·tan θ − rise: z_b the fret tops over the soundboard’s plane at the joint, S and x_b from the nut to the saddle and to the joint, θ the neck’s angle, rise how much higher than at the joint the soundboard stands at the bridge',
    grounds: [ground('derived', 'similar triangles')],
  },
  'string-height': {
    name: 'String over the soundboard',
    text: 'z = p − drop + hₛ: the frets’ plane at the saddle, less the fretboard’s fall under the string, and the string’s height over the frets there; half a millimetre of action is a millimetre of saddle',
    grounds: [ground('derived', 'similar triangles')],
  },
  'half-rule': {
    name: 'Half rule',
    text: 'height = showing + in the slot; at least half of it, or the share among the limits, stands in the slot',
    grounds: [ground('practice', 'no source')],
  },
  'saddle-blank': {
    name: 'Saddle blank',
    text: 'slot’s length less up to 0.5 mm, its width less up to 0.05, the finished height + 0.5 for shaping',
    grounds: [ground('practice', 'no source')],
  },
  'side-angle': {
    name: 'Side angle',
    text: 'turn in plan over the saddle, from the nut to the pin; the strings’ spread at the nut is taken as 0.65 of that at the saddle',
    grounds: [ground('derived', 'plane geometry'), ground('practice', 'the share 0.65')],
  },
  'measured-setback': {
    name: 'Corrected set-back',
    text: 'δ = (L₀ − q·L₁₂)/(q − 1), q = (L₀/L₁₂)·2^(−cents/1200), added to the present set-back: about 0.37 mm a cent on a scale of 645',
    grounds: [
      ground('derived', 'exact for lengths; what stretch and stiffness add is taken to stay as measured'),
    ],
  },
  'measured-saddle': {
    name: 'Corrected saddle',
    text: 'change = 2·(wanted − measured action at the 12th fret)/cos τ, τ the saddle’s lean: along the saddle',
    grounds: [ground('derived', 'the 12th fret lies half way, and the nut stays')],
  },
  ...STRENGTH_FORMULAS,
} as const satisfies Readonly<Record<string, Formula>>;

export type FormulaId = keyof typeof FORMULAS;

const SAID: Readonly<Record<Known, string>> = {
  read: 'Source, read',
  quoted: 'Source, as quoted elsewhere',
  memory: 'From memory, not looked up',
  derived: 'Derived here',
  practice: 'Common practice',
};

/** What a formula stands on, in words: each ground says how it is known. */
export function sayGrounds(id: FormulaId): string {
  const grounds: readonly Ground[] = FORMULAS[id].grounds;
  return grounds.map(({ known, what }) => `${SAID[known]}: ${what}.`).join(' ');
}
