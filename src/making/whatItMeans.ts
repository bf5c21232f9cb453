import { handSign } from '../../models/curves/slot.ts';
import { slotReach } from '../../models/curves/slotReach.ts';
import { massG, surfaceFigures } from '../../models/surface/figures.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { fixed } from '../report/said.ts';
import { centsError } from '../trade/centsError.ts';
import { actionOf, type EndHeights } from '../trade/endHeights.ts';
import { crowns } from '../trade/fit/crowns.ts';
import { jobByHand } from './jobByHand.ts';
import type { Workshop } from './workshop.ts';

/** Measured values by the id of their setting. */
export type Measured = Readonly<Record<string, number>>;

/** What the measured values mean for one string. */
export interface StringMeaning {
  readonly note: string;
  /** How much higher its crown stands, mm. */
  readonly rise: number;
  /** Over the 12th fret, mm: as designed, and as it comes out. */
  readonly action: { readonly designed: number; readonly now: number };
  /**
   * At the 12th fret, cents: as designed; as it comes out when the bridge is laid by the slot's middle; and when it is
   * laid by its back edge.
   */
  readonly cents: { readonly designed: number; readonly bySlot: number; readonly byEdge: number };
}

/** What the measured values mean. */
export interface Meaning {
  readonly strings: readonly StringMeaning[];
  /** How much further back than designed the slot's middle lies, mm, and how much more its angle is, degrees. */
  readonly slot: { readonly back: number; readonly turn: number };
  /** Bending stiffness of the block to that designed. */
  readonly stiffness: number;
  /** Least wood under the slot, mm. */
  readonly woodUnder: number;
  /** Of this piece of timber, kg/m³; undefined where its mass was not measured. */
  readonly density: number | undefined;
  /** The same in words; empty where nothing that tells was measured, or all is as designed. */
  readonly text: readonly string[];
}

/** Differences that a bench can't measure, mm. */
const UNSEEN = 0.005;

/**
 * What measured values mean for action, intonation and strength. Derived: a string goes up with the bridge's top and what
 * shows of the saddle (or with the slot's floor and the saddle's height), the action at the 12th fret by half of it
 * (I3); cents by the error of a fretted note (I2) with crown and height where they now are; a beam's stiffness goes
 * with its thickness cubed. Values that are not told are taken to be as designed. Throws `RangeError` for what is no
 * finite number, or no length.
 */
export function whatItMeans(accepted: AcceptedDesign, workshop: Workshop, measured: Measured): Meaning {
  const settings = new Map(
    jobByHand(accepted, workshop).flatMap((step) => step.settings.map((one) => [one.id, one.value] as const)),
  );
  for (const [id, value] of Object.entries(measured)) {
    if (!Number.isFinite(value) || value < 0) throw new RangeError(`${id}: ${value} is not a measured value`);
  }
  /** Measured − wanted of the first of these that was measured. */
  const off = (...ids: readonly string[]): number | undefined => {
    const id = ids.find((one) => Object.hasOwn(measured, one) && settings.has(one));
    return id === undefined ? undefined : (measured[id] as number) - (settings.get(id) as number);
  };
  const { design, curves, fit } = accepted;
  const lean = Math.cos(curves.slot.tilt);
  const thicker = off('check.thickness', 'crown.thickness') ?? 0;
  // a thicker blank asks for as much more depth from its face
  const planed = (off('thickness.planed') ?? 0) / lean;
  const fromFace = off('slot.depth');
  const deeper =
    off('check.slot-depth', 'crown.left-middle') ?? (fromFace === undefined ? 0 : fromFace - planed);
  const slot = slotOff(accepted, off('check.slot-treble') ?? 0, off('check.slot-bass') ?? 0);
  const hand = handSign(design);

  const strings = crowns(design, fit).map((crown, i): StringMeaning => {
    const showing = off(`saddle.showing-${i + 1}`);
    const height = off(`saddle.height-${i + 1}`) ?? 0;
    const rise = thicker + lean * (showing ?? height - deeper);
    const { x = 0, note = '' } = fit.strings[i] ?? {};
    const { setup, nutMm } = fit.slot.wanted[i] ?? {};
    const heights = fit.heights[i] as EndHeights;
    const designed = actionOf(heights).at12 + fit.height.tooHigh / 2;
    const cents = (back: number): number => {
      if (!setup) return 0;
      const raised = { ...setup, heights: { ...heights, saddle: heights.saddle + rise } };
      // a leaning saddle carries its crown back as it rises
      const leans = (rise * Math.tan(curves.slot.tilt)) / Math.cos(curves.slot.angle);
      return centsError(raised, 12, crown.setback + back + leans, nutMm);
    };
    // to the treble of the middle the slot that is turned further comes nearer to the nut
    const turned = slot.turnedBack(hand * x);
    return {
      note,
      rise,
      action: { designed, now: designed + rise / 2 },
      cents: {
        designed: crown.cents.filed[11] ?? 0,
        bySlot: cents(turned),
        byEdge: cents(turned + slot.back),
      },
    };
  });

  const { thickness } = design.top;
  const wood = settings.get('check.wood-under') as number;
  const woodUnder = measured['check.wood-under'] ?? wood + thicker - lean * deeper;
  const stiffness = (Math.max(0, thickness + thicker) / thickness) ** 3;
  const grams = measured['check.mass'];
  const density =
    grams === undefined ? undefined : grams / massG(surfaceFigures(curves, 'drilled').volumeMm3, 1);
  const meaning = {
    strings,
    slot: { back: slot.back, turn: slot.turn },
    stiffness,
    woodUnder,
    density,
  };
  return {
    ...meaning,
    text: inWords(meaning, accepted, {
      thicker,
      wood,
      width: measured['check.slot-width'],
      fromFace: (settings.get('slot.depth') as number) + planed,
      planed,
    }),
  };
}

/** How the slot lies otherwise, from its two ends' distances to the back edge: longer is nearer to the nut. */
function slotOff({ curves, design }: AcceptedDesign, treble: number, bass: number) {
  const { slot } = curves;
  const half = slotReach(curves) * Math.cos(slot.angle);
  const slope = Math.tan((design.saddle.angle * Math.PI) / 180);
  const steeper = (treble - bass) / (2 * half);
  return {
    back: -(treble + bass) / 2,
    turn: (Math.atan(slope + steeper) * 180) / Math.PI - design.saddle.angle,
    /** How much further back it lies at a place so far to the treble, the middle held, mm. */
    turnedBack: (toTreble: number) => -steeper * toTreble,
  };
}

interface Told {
  readonly thicker: number;
  readonly wood: number;
  /** How much more the slot's depth from the blank's face must be, and what it then is, mm. */
  readonly planed: number;
  readonly fromFace: number;
  /** Of the slot, as measured. */
  readonly width: number | undefined;
}

function inWords(
  meaning: Omit<Meaning, 'text'>,
  { design, curves }: AcceptedDesign,
  { thicker, wood, width, planed, fromFace }: Told,
): readonly string[] {
  const { strings, slot, stiffness, woodUnder, density } = meaning;
  const out: string[] = [];
  if (Math.abs(planed) >= UNSEEN) {
    out.push(
      `The blank is planed ${planed > 0 ? 'thicker' : 'thinner'} than set: cut the slot ${fixed(fromFace, 2)} mm deep in all from its face, ${fixed(Math.abs(planed), 2)} ${planed > 0 ? 'more' : 'less'}.`,
    );
  }
  const rises = strings.map(({ rise }) => rise);
  if (rises.some((rise) => Math.abs(rise) >= UNSEEN)) {
    const each = strings.map(
      ({ note, action }) => `${note} ${fixed(action.now, 2)} (${fixed(action.designed, 2)} designed)`,
    );
    const most = rises.reduce((far, rise) => (Math.abs(rise) > Math.abs(far) ? rise : far), 0);
    out.push(
      `Action at the 12th fret comes out at ${each.join(', ')} mm: half of what the crowns stand ${most > 0 ? 'higher' : 'lower'}, ${fixed(Math.abs(most), 2)} mm at most. The saddle’s height takes it up again.`,
    );
  }
  if (Math.abs(slot.back) >= UNSEEN || Math.abs(slot.turn) >= 0.005) {
    const said = (which: 'bySlot' | 'byEdge') =>
      strings.map(({ note, cents }) => `${note} ${fixed(cents[which], 1)}`).join(', ');
    out.push(
      `The slot lies ${fixed(Math.abs(slot.back), 2)} mm further ${slot.back > 0 ? 'back' : 'forward'} on the bridge, at ${fixed(design.saddle.angle + slot.turn, 2)}° in place of ${fixed(design.saddle.angle, 2)}°. Lay the bridge by the slot’s middle, ${fixed(design.guitar.scale + design.saddle.setback, 2)} mm from the scale’s end at the nut, and the 12th frets are off by ${said('bySlot')} cents; laid by its back edge they are off by ${said('byEdge')}. As designed: ${strings.map(({ note, cents }) => `${note} ${fixed(cents.designed, 1)}`).join(', ')}.`,
    );
  }
  if (Math.abs(thicker) >= UNSEEN) {
    out.push(
      `The block is ${fixed(Math.abs(stiffness - 1) * 100, 0)} % ${stiffness > 1 ? 'stiffer' : 'less stiff'} than designed: stiffness goes with thickness cubed. That compares two bridges, and promises no strength.`,
    );
  }
  if (Math.abs(woodUnder - wood) >= UNSEEN) {
    out.push(
      `Wood under the slot: ${fixed(woodUnder, 2)} mm in place of ${fixed(wood, 2)}${woodUnder < 2 ? '; 2 to 3 is common practice' : ''}.`,
    );
  }
  if (width !== undefined && Math.abs(width - curves.slot.width) >= UNSEEN) {
    out.push(
      `The saddle goes with its slot: make it ${fixed(width - 0.05, 2)} to ${fixed(width, 2)} mm thick.`,
    );
  }
  if (density !== undefined) {
    out.push(
      `This piece of ${design.timber.name} has ${fixed(density, 0)} kg/m³, ${fixed(design.timber.density, 0)} in the design.`,
    );
  }
  return out;
}
