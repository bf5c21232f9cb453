import type { Curves, Pin, Slot } from '../../../models/curves/curves.ts';
import { arc, type Chain, line, type Point } from '../../../models/curves/segment.ts';

/** A slot that takes nothing: its floor lies high over the wood. */
const NO_SLOT: Slot = {
  angle: 0,
  tilt: 0,
  width: 1,
  halfLength: 2,
  roundEnds: false,
  depth: -100,
  floorRadius: undefined,
  plan: [],
};

/** A level block of `length` (x) by `depth` (y) by `thickness` mm round the origin, and whatever else is given. */
export function slab(
  length: number,
  depth: number,
  thickness: number,
  rest: Partial<Curves> = {},
): Curves & { readonly outline: Chain } {
  return {
    outline: rounded(length, depth, 0),
    profile: level(thickness),
    underside: { shape: 'flat' },
    edge: { kind: 'none' },
    slot: NO_SLOT,
    pins: [],
    channels: [],
    ...rest,
  };
}

/** A level profile, or one that falls by `slope` for each mm of x. */
export function level(thickness: number, slope = 0): Curves['profile'] {
  return {
    chain: [line([-500, thickness + 500 * slope], [500, thickness - 500 * slope])],
    thickness,
    crownRadius: Number.POSITIVE_INFINITY,
    crownEnd: 500,
    runStart: 500,
  };
}

/** A rectangle round the origin with corners of one radius; 0 leaves them sharp. */
export function rounded(length: number, depth: number, radius: number): Chain {
  const [x, y] = [length / 2, depth / 2];
  const [a, b] = [x - radius, y - radius];
  const corner = (cx: number, cy: number, from: Point, to: Point) =>
    radius > 0 ? [arc(from, to, [cx, cy], 1)] : [];
  return [
    line([-a, -y], [a, -y]),
    ...corner(a, -b, [a, -y], [x, -b]),
    line([x, -b], [x, b]),
    ...corner(a, b, [x, b], [a, y]),
    line([a, y], [-a, y]),
    ...corner(-a, b, [-a, y], [-x, b]),
    line([-x, b], [-x, -b]),
    ...corner(-a, -b, [-x, -b], [-a, -y]),
  ];
}

export const disc = (r: number): Chain => [arc([r, 0], [-r, 0], [0, 0], 1), arc([-r, 0], [r, 0], [0, 0], 1)];

/** A hole at a place whose wall goes through the given (radius, z), from the lowest up. */
export function hole(at: Point, top: number, ...wall: readonly Point[]): Pin {
  const [lowest, highest] = [wall[0] as Point, wall[wall.length - 1] as Point];
  const outline: readonly Point[] = [[0, lowest[1]], ...wall, [0, highest[1]]];
  return { at, top, outline: { drilled: outline, reamed: outline }, reach: highest[0] };
}

/** A round-ended slot of an overall length, or an open one that is cut on to both sides of the middle by half of it. */
export function slotOf(width: number, length: number, depth: number, rest: Partial<Slot> = {}): Slot {
  return {
    angle: 0,
    tilt: 0,
    width,
    halfLength: length / 2,
    roundEnds: true,
    depth,
    floorRadius: undefined,
    plan: [],
    ...rest,
  };
}
