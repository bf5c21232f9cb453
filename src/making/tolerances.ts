import type { Tolerance } from './step.ts';

/** Limits of ISO 2768-1, class m, for linear dimensions: up to so many mm, ±mm. Read in a quotation. */
const GENERAL: readonly (readonly [number, number])[] = [
  [6, 0.1],
  [30, 0.2],
  [120, 0.3],
  [400, 0.5],
];

/** The general tolerance of a length, mm: ISO 2768-m. Lengths under half a millimetre have none and get the least. */
export function general(length: number): Tolerance {
  const [, off] = GENERAL.find(([most]) => Math.abs(length) <= most) ?? [0, 0.8];
  return { minus: off, plus: off, ground: 'ISO 2768-m' };
}

/** A tolerance that is the same to both sides. */
export const within = (off: number, ground: string): Tolerance => ({ minus: off, plus: off, ground });

/** What a saddle must fit, pins must fill and strings must stand on needs tolerances of its own: common practice. */
export const SLOT_WIDTH: Tolerance = {
  minus: 0,
  plus: 0.05,
  ground: 'own: a saddle slides in by hand and does not lean',
};
export const SLOT_DEPTH = within(0.1, 'own: twice what the action at the 12th fret may be off');
export const SLOT_PLACE = within(0.15, 'own: a third of a millimetre is about a cent at the 12th fret');
/** Degrees. */
export const SLOT_ANGLE = within(0.1, 'own: 0.1° moves the outer strings’ ends by 0.05 mm');
export const PIN_HOLE: Tolerance = {
  minus: 0,
  plus: 0.1,
  ground: 'own: the reamer must find wood all round',
};
export const PIN_PLACE = within(0.2, 'own: the eye sees a row of pins before a calliper does');
export const GLUE_FACE = within(0.05, 'common practice: clamps close no wider gap without strain');
export const MOUTH = within(0.1, 'own: 0.1 mm of diameter sinks a pin by a millimetre or two');
export const CROWN = within(0.1, 'own: twice what the action at the 12th fret may be off');
