/** How far off a measured value may be, in its own unit, both positive. */
export interface Tolerance {
  readonly minus: number;
  readonly plus: number;
  /** Where it comes from: a standard, or why this one needs its own. */
  readonly ground: string;
}

/** Limits of ISO 2768-1, class m, for linear dimensions: up to so many mm, ±mm. Read in a quotation. */
export const ISO_2768_M: readonly (readonly [number, number])[] = [
  [6, 0.1],
  [30, 0.2],
  [120, 0.3],
  [400, 0.5],
];

/** The general tolerance of a length, mm: ISO 2768-m. Lengths under half a millimetre have none and get the least. */
export function general(length: number): Tolerance {
  const [, off] = ISO_2768_M.find(([most]) => Math.abs(length) <= most) ?? [0, 0.8];
  return { minus: off, plus: off, ground: 'ISO 2768-m' };
}

/** A tolerance that is the same to both sides. */
export const within = (off: number, ground: string): Tolerance => ({ minus: off, plus: off, ground });

/**
 * What a saddle must fit, pins must fill and strings must stand on needs tolerances of its own, mm and degrees: our own
 * levels and common practice, as each says. Drawing, note and steps all read them here.
 */
export const TOLERANCES = {
  'slot-width': { minus: 0, plus: 0.05, ground: 'own: a saddle slides in by hand and does not lean' },
  'slot-depth': within(0.1, 'own: twice what the action at the 12th fret may be off'),
  'slot-place': within(0.15, 'own: a third of a millimetre is about a cent at the 12th fret'),
  /** Degrees. */
  'slot-angle': within(0.1, 'own: 0.1° moves the outer strings’ ends by 0.05 mm'),
  'pin-hole': { minus: 0, plus: 0.1, ground: 'own: the reamer must find wood all round' },
  'pin-place': within(0.2, 'own: the eye sees a row of pins before a calliper does'),
  'glue-face': within(0.05, 'common practice: clamps close no wider gap without strain'),
  mouth: within(0.1, 'own: 0.1 mm of diameter sinks a pin by a millimetre or two'),
  /** Of the thickness in the middle too. */
  crown: within(0.1, 'own: twice what the action at the 12th fret may be off'),
} as const satisfies Readonly<Record<string, Tolerance>>;
