/** From where the part is seen, whichever camera sees it. */
export interface Pose {
  /** The point at the middle of the view, mm. */
  readonly target: readonly [number, number, number];
  /** Degrees about +Z from the tail (−Y) toward +X. */
  readonly azimuth: number;
  /** Degrees above the glue plane. */
  readonly elevation: number;
  /** mm from the middle of the view to its upper edge, at the target. */
  readonly reach: number;
}

export type Direction = Pick<Pose, 'azimuth' | 'elevation'>;

/** From the middle of the perspective view to its upper edge, degrees: narrow, so that near ends do not bulge. */
export const HALF_ANGLE = 12;

/** The six set views, by the words on their buttons. */
export const SET_VIEWS = {
  'from above': { azimuth: 0, elevation: 90 },
  'from below': { azimuth: 0, elevation: -90 },
  'from the tail': { azimuth: 0, elevation: 0 },
  'from the soundhole': { azimuth: 180, elevation: 0 },
  'left end': { azimuth: -90, elevation: 0 },
  'right end': { azimuth: 90, elevation: 0 },
} as const satisfies Record<string, Direction>;

export type SetView = keyof typeof SET_VIEWS;

/** From the player's front, slightly above and a hair to the left: top, slot, holes, back edge and one end are seen. */
export const FIRST_VIEW: Direction = { azimuth: -4, elevation: 40 };

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const degrees = (angle: number) => (angle * 180) / Math.PI;

type Vector = readonly [number, number, number];

/** Right, up and toward the eye, as unit vectors. */
export function axesOf({ azimuth, elevation }: Direction): { right: Vector; up: Vector; back: Vector } {
  const [a, e] = [radians(azimuth), radians(elevation)];
  const [sa, ca, se, ce] = [Math.sin(a), Math.cos(a), Math.sin(e), Math.cos(e)];
  return { right: [ca, sa, 0], up: [-sa * se, ca * se, ce], back: [sa * ce, -ca * ce, se] };
}

/** The direction in which an eye at `offset` from its target stands. */
export function directionOf([x, y, z]: Vector): Direction {
  const azimuth = Math.abs(x) + Math.abs(y) < 1e-12 ? 0 : degrees(Math.atan2(x, -y));
  return { azimuth, elevation: degrees(Math.atan2(z, Math.hypot(x, y))) };
}

/** Distance from the eye to the target at which the perspective view reaches `reach`, mm. */
export const distanceFor = (reach: number) => reach / Math.tan(radians(HALF_ANGLE));

/** What the perspective view reaches at a target this far from the eye, mm. */
export const reachAt = (distance: number) => distance * Math.tan(radians(HALF_ANGLE));

/** The set view that looks in this direction, to half a degree. */
export function setViewAt(direction: Direction): SetView | undefined {
  const { back } = axesOf(direction);
  return (Object.keys(SET_VIEWS) as SetView[]).find((view) => {
    const axes = axesOf(SET_VIEWS[view]);
    const along = back[0] * axes.back[0] + back[1] * axes.back[1] + back[2] * axes.back[2];
    return along > Math.cos(radians(0.5));
  });
}

export interface Frame {
  /** Width over height of the view. */
  readonly aspect: number;
  /** Parallel rays instead of a perspective. */
  readonly parallel: boolean;
  /** The share of the view that the part may fill, in width and in height. */
  readonly fill: number;
}

/** The pose in this direction that shows the points (xyz triples, mm) in the middle, filling the frame's share. */
export function poseFraming(
  points: Float32Array,
  direction: Direction,
  { aspect, parallel, fill }: Frame,
): Pose {
  const { right, up, back } = axesOf(direction);
  const along = (axis: Vector, i: number) =>
    axis[0] * (points[i] as number) +
    axis[1] * (points[i + 1] as number) +
    axis[2] * (points[i + 2] as number);

  if (points.length < 3) return { ...direction, target: [0, 0, 0], reach: 10 };
  const depth = span();
  for (let i = 0; i + 2 < points.length; i += 3) widen(depth, along(back, i));
  const middle = { x: 0, y: 0, depth: centre(depth) };

  // A perspective shows near points larger, so the middle and the distance depend on one another: a few rounds settle them.
  const slope = Math.tan(radians(HALF_ANGLE)) * fill;
  let distance = Infinity;
  for (let round = 0; round < 6; round++) {
    const [x, y] = [span(), span()];
    let needed = 0;
    for (let i = 0; i + 2 < points.length; i += 3) {
      const nearer = along(back, i) - middle.depth;
      const size = parallel || distance === Infinity ? 1 : distance / (distance - nearer);
      const [dx, dy] = [along(right, i) - middle.x, along(up, i) - middle.y];
      widen(x, dx * size);
      widen(y, dy * size);
      needed = Math.max(
        needed,
        Math.max(Math.abs(dx) / aspect, Math.abs(dy)) / slope + (parallel ? 0 : nearer),
      );
    }
    // The first round only finds the middle, the others the distance as well.
    if (round > 0) distance = parallel ? needed : Math.max(needed, half(depth) + 1);
    middle.x += centre(x);
    middle.y += centre(y);
  }
  const reach = Math.max(reachAt(distance), 0.5);
  const target = [0, 1, 2].map(
    (k) => middle.x * at(right, k) + middle.y * at(up, k) + middle.depth * at(back, k),
  ) as unknown as Vector;
  return { ...direction, target, reach };
}

const at = (vector: Vector, k: number) => vector[k] as number;

interface Span {
  low: number;
  high: number;
}
const span = (): Span => ({ low: Infinity, high: -Infinity });
const widen = (s: Span, value: number) => {
  if (value < s.low) s.low = value;
  if (value > s.high) s.high = value;
};
const centre = ({ low, high }: Span) => (low + high) / 2;
const half = ({ low, high }: Span) => (high - low) / 2;

/** The pose on the way from one to another, `t` from 0 to 1; it turns the short way round, and grows evenly. */
export function between(from: Pose, to: Pose, t: number): Pose {
  const mix = (a: number, b: number) => a + (b - a) * t;
  const turn = ((((to.azimuth - from.azimuth) % 360) + 540) % 360) - 180;
  return {
    target: [0, 1, 2].map((k) => mix(at(from.target, k), at(to.target, k))) as unknown as Vector,
    azimuth: from.azimuth + turn * t,
    elevation: mix(from.elevation, to.elevation),
    reach: from.reach * (to.reach / from.reach) ** t,
  };
}
