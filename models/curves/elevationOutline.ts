import { backwards, mirrorImage } from './chain.ts';
import type { Curves, Profile, Underside } from './curves.ts';
import { halfLengthOf } from './outlinePieces.ts';
import { arc, type Chain, distance, line, nearestOn, type Point, type Segment } from './segment.ts';
import { heightOn, insetProfile, topHeight } from './topHeight.ts';
import { undersideHeight } from './underside.ts';

/** The part seen along Y: (x, z), mm. */
export interface ElevationOutline {
  /** All of it, closed, counter-clockwise: below, the right end's face, the top, the left end's face. */
  readonly body: Chain;
  /** The glue face from left to right. */
  readonly below: Chain;
  /** The right end's face, upward. */
  readonly face: Segment;
}

export function elevationOutline(curves: Curves): ElevationOutline {
  const half = halfLengthOf(curves.outline);
  const below = gluedFace(curves.underside, half);
  const top = edgedTop(curves, half);
  const [topEnd, floor] = [top[top.length - 1] as Segment, below[0] as Segment];
  const face = line(floor.to, topEnd.to);
  return { body: [...below, face, ...backwards(top), ...mirrorImage([face])], below, face };
}

/** The glue face on the line y = 0, from left to right, mm. */
export function gluedFace(face: Underside, half: number): Chain {
  const z = undersideHeight(face, half, 0);
  const [from, to]: readonly [Point, Point] = [
    [-half, z],
    [half, z],
  ];
  return [face.shape === 'flat' ? line(from, to) : arc(from, to, [0, -face.radius], -1)];
}

/** The part of a left-to-right chain within half a length of the middle. */
export function clipped(chain: Chain, half: number): Chain {
  return chain
    .filter((s) => s.from[0] < half - 1e-9 && s.to[0] > -half + 1e-9)
    .map((s): Segment => {
      const from: Point = s.from[0] < -half ? [-half, heightOn([s], -half)] : s.from;
      const to: Point = s.to[0] > half ? [half, heightOn([s], half)] : s.to;
      return { ...s, from, to };
    });
}

/** The top with its edge taken off at both tips, left to right. */
function edgedTop({ profile, edge }: Curves, half: number): Chain {
  if (edge.kind === 'none') return clipped(profile.chain, half);
  const off = edge.kind === 'round' ? rounded(profile, edge.size, half) : chamfered(profile, edge.size, half);
  return [...mirrorImage([off]), ...clipped(profile.chain, off.from[0]), off];
}

/** The chamfer at the right tip: as far from the corner on the top as on the tip's face. */
function chamfered(profile: Profile, size: number, half: number): Segment {
  const corner: Point = [half, topHeight(profile, half)];
  const on = (x: number): Point => [x, topHeight(profile, x)];
  let [near, far] = [half, half - size];
  for (let i = 0; i < 40; i++) {
    const x = (near + far) / 2;
    if (distance(on(x), corner) < size) near = x;
    else far = x;
  }
  return line(on(far), [half, corner[1] - size]);
}

/** The round-over at the right tip: it touches the tip's face and the top, as a ball rolled along them does. */
function rounded(profile: Profile, radius: number, half: number): Segment {
  const centre: Point = [half - radius, heightOn(insetProfile(profile, radius), half - radius)];
  const touch = profile.chain
    .map((s) => nearestOn(s, centre))
    .reduce((best, n) => (n.distance < best.distance ? n : best)).point;
  return arc(touch, [half, centre[1]], centre, -1);
}
