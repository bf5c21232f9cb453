import type { Point } from '../../models/curves/segment.ts';

const DEGREES = 180 / Math.PI;
/** Two contacts within a millionth of slope are one: the later counts. */
const SAME = 1e-9;

/** How a string goes down behind its saddle. */
export interface Break {
  /** Angle of the string behind the crown, degrees below the glue plane's direction. */
  readonly behind: number;
  /** Behind and in front together, degrees: what the string turns through over the crown. */
  readonly angle: number;
  /** Crown to where the string first touches wood, mm: down, and along in plan. */
  readonly rise: number;
  readonly run: number;
  /** Which of the wood's points it touches first. */
  readonly touches: number;
  /** Whether that is where it enters the hole. If not, the string bends over the wood on its way. */
  readonly straight: boolean;
  /** How much wood stands over the straight line from crown to hole, mm; 0 when none does. */
  readonly inTheWay: number;
}

/**
 * The break angle: B4, atan(rise/run) behind plus the front slope; derived. A taut string leaves the crown
 * toward that point of the wood to which it falls least: the hole's edge, or whatever stands in between.
 *
 * @param crownHeight z of the saddle's crown, mm
 * @param wood (s, z) of the wood under the string, mm, s from the crown along the string's run in plan, increasing and
 *   positive; the last is where the string enters the hole (see `woodBehind`)
 * @param frontSlope how much the string falls from the crown toward the nut, degrees (see `frontSlope`)
 * @throws RangeError when there is no wood or it doesn't lie behind the crown
 */
export function breakAngle(crownHeight: number, wood: readonly Point[], frontSlope: number): Break {
  const entry = wood[wood.length - 1];
  if (!entry || wood.some(([s]) => !(s > 0))) {
    throw new RangeError('the pin hole’s edge must lie behind the saddle’s crown');
  }
  const slopeTo = ([s, z]: Point) => (z - crownHeight) / s;
  const least = Math.max(...wood.map(slopeTo));
  const touches = wood.findLastIndex((p) => slopeTo(p) >= least - SAME);
  const [run, z] = wood[touches] as Point;
  const toHole = slopeTo(entry);
  const inTheWay = Math.max(
    0,
    ...wood.slice(0, -1).map(([s, height]) => height - (crownHeight + toHole * s)),
  );
  const straight = touches === wood.length - 1;
  const behind = Math.atan2(crownHeight - z, run) * DEGREES;
  return {
    behind,
    angle: behind + frontSlope,
    rise: crownHeight - z,
    run,
    touches,
    straight,
    inTheWay: straight ? 0 : inTheWay,
  };
}
