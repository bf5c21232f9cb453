import { endHeights } from '../../src/trade/endHeights.ts';
import { type IntonationSetup, intonationSetup } from '../../src/trade/intonationSetup.ts';
import { massPerLength } from '../../src/trade/massPerLength.ts';
import { pitchFrequency } from '../../src/trade/notes.ts';
import { plainString, type StringSpec, woundString } from '../../src/trade/stringSpec.ts';
import { tension } from '../../src/trade/tension.ts';

/** The set whose tensions and set-backs two programs derived: cores are assumed. Inches, treble to bass. */
const IN = 25.4;
export const LIGHT_SET: readonly StringSpec[] = [
  plainString(0.012 * IN),
  plainString(0.016 * IN),
  woundString(0.024 * IN, 0.011 * IN),
  woundString(0.032 * IN, 0.014 * IN),
  woundString(0.042 * IN, 0.016 * IN),
  woundString(0.053 * IN, 0.018 * IN),
];

export const SCALE_MM = 645.16;
const NOTES = ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'];

/** Its tensions at that scale, N. */
export const lightTensions = LIGHT_SET.map((string, i) =>
  tension(massPerLength(string), SCALE_MM / 1000, pitchFrequency(NOTES[i] ?? '') ?? Number.NaN),
);

/** The set on a guitar with action 1.9 to 2.4 at the twelfth fret and .40 to .55 at the first, treble to bass. */
export function lightSetups(clampedEnds: number): IntonationSetup[] {
  return LIGHT_SET.map((string, i) =>
    intonationSetup(
      { string, tensionN: lightTensions[i] ?? Number.NaN },
      SCALE_MM,
      endHeights({ at1: 0.4 + 0.03 * i, at12: 1.9 + 0.1 * i }),
      clampedEnds,
    ),
  );
}

/** A spread of 55 between first and last string, equally divided: x of each, treble first. */
export const LIGHT_PLACES = LIGHT_SET.map((_, i) => 27.5 - 11 * i);
