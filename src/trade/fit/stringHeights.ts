import { fretPlace } from '../../../models/curves/fretboard.ts';
import type { Design } from '../../design/design.ts';
import { DesignError, type Problem, tooLittle } from '../../design/problem.ts';
import { acrossStrings } from '../acrossStrings.ts';
import { type EndHeights, endHeights } from '../endHeights.ts';

/** Least air under an open string at the nut, mm: less and it buzzes on the first fret. */
const LEAST_AT_NUT = 0.02;

/**
 * Heights of each string over the plane of the fret tops at nut and saddle, mm (I3), from the action over the 12th fret
 * and the clearance over the 1st, each going straight from the first string to the last. Throws `DesignError` when a
 * string would lie on the frets.
 *
 * @param places x of the strings at the saddle, mm
 */
export function stringHeights({ action }: Design, places: readonly number[]): readonly EndHeights[] {
  const at12 = acrossStrings(places, action.treble, action.bass);
  const at1 = acrossStrings(places, action.firstTreble, action.firstBass);
  const heights = places.map((_, i) => endHeights({ at12: at12[i] as number, at1: at1[i] as number }));
  const wrong = [
    onFrets('action.firstTreble', action.firstTreble, action.treble, heights[0]),
    onFrets('action.firstBass', action.firstBass, action.bass, heights[heights.length - 1]),
  ].flat();
  if (wrong.length > 0) throw new DesignError(wrong);
  return heights;
}

function onFrets(path: string, given: number, at12: number, heights: EndHeights | undefined): Problem[] {
  if (!heights || heights.nut >= LEAST_AT_NUT) return [];
  const r = fretPlace(1, 1);
  const least = 2 * at12 * r + LEAST_AT_NUT * (1 - 2 * r);
  const why = `with ${at12} over the 12th fret, or the string lies on the nut’s side of the 1st fret`;
  return [tooLittle(path, given, least, why, 'Measure both again, or raise the nut.')];
}
