import { stringPlaces } from '../../../models/curves/strings.ts';
import type { Design } from '../../design/design.ts';
import { DesignError, misfit, type Problem, tooMuch } from '../../design/problem.ts';
import { coreStress, coreStressShare } from '../coreStress.ts';
import { inharmonicity } from '../inharmonicity.ts';
import { massPerLength } from '../massPerLength.ts';
import { pitchFrequency } from '../notes.ts';
import { ALL_CORE_MM, plainString, type StringSpec, woundString } from '../stringSpec.ts';
import { tension } from '../tension.ts';

/** One string of a design, tuned. */
export interface TunedString {
  readonly note: string;
  /** Of its centre at the saddle, mm; +x to the treble of a right-handed guitar, to the bass of a left-handed one. */
  readonly x: number;
  readonly spec: StringSpec;
  readonly frequencyHz: number;
  readonly massKgM: number;
  /** S2, over the scale length. */
  readonly tensionN: number;
  readonly stressPa: number;
  /** Of what string steel is stressed up to, about 2 GPa (S5's source). */
  readonly stressShare: number;
  /** B of S7, over the scale length. */
  readonly inharmonicity: number;
}

/** Strings whose core bears more are refused, GPa: what thin music wire is said to bear at most, from memory. */
const MOST_GPA = 2.9;

/** No string is played at a tenth of the usual pull, N: common practice. */
const LEAST_PULL = 10;

/** The lists that must have an entry for each string. */
const LISTS = ['notes', 'diameters', 'cores', 'wraps'] as const;

/** The strings of a design, treble first. Throws `DesignError` when a list is short, or a string can't be. */
export function tunedStrings(design: Design): readonly TunedString[] {
  const { strings, guitar } = design;
  const short = LISTS.filter((list) => strings[list].length < strings.count);
  if (short.length > 0) throw new DesignError(short.map((list) => tooFew(list, design)));
  const places = stringPlaces(design);
  const tuned = places.map((x, i) => tunedString(design, x, i));
  const wrong = tuned.flatMap((string, i) => impossible(string, i, guitar.scale));
  if (wrong.length > 0) throw new DesignError(wrong);
  return tuned;
}

function tunedString({ strings, guitar }: Design, x: number, i: number): TunedString {
  const [diameter, core] = [strings.diameters[i] as number, strings.cores[i] as number];
  const note = (strings.notes[i] as string).trim();
  const spec =
    core >= diameter - ALL_CORE_MM
      ? { ...plainString(diameter), coreMm: core }
      : woundString(diameter, core, strings.wraps[i] as number);
  const frequencyHz = pitchFrequency(note, strings.pitch) as number;
  const massKgM = massPerLength(spec);
  const lengthM = guitar.scale / 1000;
  const tensionN = tension(massKgM, lengthM, frequencyHz);
  return {
    note,
    x,
    spec,
    frequencyHz,
    massKgM,
    tensionN,
    stressPa: coreStress(spec, tensionN),
    stressShare: coreStressShare(spec, tensionN),
    inharmonicity: inharmonicity(spec, tensionN, lengthM, strings.modulus * 1e9),
  };
}

function tooFew(list: (typeof LISTS)[number], { strings }: Design): Problem {
  return misfit(
    `strings.${list}`,
    `a list of ${strings[list].length}`,
    `one for each of ${strings.count} strings`,
    'Give one for each string, treble first.',
  );
}

function impossible({ spec, stressPa, tensionN, note }: TunedString, i: number, scale: number): Problem[] {
  if (spec.coreMm > spec.diameterMm + ALL_CORE_MM) {
    const remedy = 'A core is inside its string: for a plain string give the same diameter twice.';
    return [tooMuch(`strings.cores.${i + 1}`, spec.coreMm, spec.diameterMm, 'in this string', remedy)];
  }
  if (tensionN < LEAST_PULL) {
    return [
      misfit(
        `strings.notes.${i + 1}`,
        `${note}: ${tensionN.toFixed(1)} N on ${scale} mm`,
        `at least ${LEAST_PULL} N, below which a string hangs slack`,
        'Tune it higher, or take a thicker string.',
      ),
    ];
  }
  const gpa = stressPa / 1e9;
  if (gpa <= MOST_GPA) return [];
  return [
    misfit(
      `strings.notes.${i + 1}`,
      `${note}: ${tensionN.toFixed(0)} N, ${gpa.toFixed(2)} GPa in the core on ${scale} mm`,
      `at most ${MOST_GPA} GPa: more than music wire is said to bear (from memory)`,
      'Tune it lower, take a string with a thicker core, or a thinner wrap.',
    ),
  ];
}
