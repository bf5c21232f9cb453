import { fretboardRadius, fretPlace } from '../../../models/curves/fretboard.ts';
import type { Design } from '../../design/design.ts';
import type { EndHeights } from '../endHeights.ts';
import { fretboardDrop } from '../fretboardDrop.ts';
import { fretPlaneHeight } from '../fretPlaneHeight.ts';
import { middleOf } from '../middleOf.ts';
import { showingForThickness, thicknessForShowing } from '../saddleShowing.ts';
import { stringUnderside } from '../stringUnderside.ts';
import { rounded } from './rounded.ts';

/** How high everything stands over the glue plane at the saddle, mm. */
export interface HeightFit {
  /** p: the plane of the fret tops, on the centre line. */
  readonly fretPlane: number;
  /** The fretboard's radius, carried on to the saddle. */
  readonly fretboardRadius: number;
  /** Strings over the fret tops' plane on the centre line, hs. */
  readonly overFrets: number;
  readonly solvedThickness: number;
  readonly solvedShowing: number;
  readonly thickness: number;
  readonly showing: number;
  /** How much higher the strings stand than the action asks: 0 unless thickness and showing are both set by hand. */
  readonly tooHigh: number;
  /** Underside of each string. */
  readonly undersides: readonly number[];
}

/**
 * Heights from the action (§5 of the trade's formulas: z = p − drop + hs), the thickness from the showing that is wanted
 * or the showing from the thickness that is set.
 *
 * @param design with the slot's set-back as it is used
 */
export function heightFit(
  { guitar, action, saddle, top }: Design,
  places: readonly number[],
  heights: readonly EndHeights[],
): HeightFit {
  const fromNut = guitar.scale + saddle.setback;
  const fretPlane = fretPlaneHeight(
    action.planeBy === 'straightedge'
      ? { by: 'straightedge', overSoundboard: action.planeHeight }
      : {
          by: 'neck',
          overJoint: action.jointHeight,
          jointFromNut: fretPlace(guitar.scale, action.neckJoint),
          saddleFromNut: fromNut,
          neckAngle: action.neckAngle,
          domeRise: action.domeRise,
        },
  );
  const radius = fretboardRadius(guitar, fromNut);
  const overFrets = middleOf(
    places,
    heights.map(({ saddle: hs }) => hs),
  );
  const solvedThickness = rounded(thicknessForShowing(fretPlane, overFrets, saddle.showing));
  const thickness = top.thicknessBy === 'set' ? top.thickness : solvedThickness;
  const solvedShowing = rounded(showingForThickness(fretPlane, overFrets, thickness));
  const showing = showingIsSet({ saddle, top }) ? saddle.showing : solvedShowing;
  const beyond = thickness + showing - fretPlane - overFrets;
  // what rounding leaves is not the hand's: a solved number set by hand must not move a string
  const tooHigh = Math.abs(beyond) < 1e-3 ? 0 : beyond;
  return {
    fretPlane,
    fretboardRadius: radius,
    overFrets,
    solvedThickness,
    solvedShowing,
    thickness,
    showing,
    tooHigh,
    undersides: places.map((x, i) => {
      const at = { fretPlane, drop: fretboardDrop(radius, x) };
      return stringUnderside(at, (heights[i] as EndHeights).saddle) + tooHigh;
    }),
  };
}

/** Whether the showing is an input: set by hand, or wanted of a thickness that is solved. */
export function showingIsSet({ saddle, top }: Pick<Design, 'saddle' | 'top'>): boolean {
  return top.thicknessBy === 'solved' || saddle.showingBy === 'set';
}
