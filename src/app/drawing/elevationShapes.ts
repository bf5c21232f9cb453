import { backwards, mirrorImage } from '../../../models/curves/chain.ts';
import type { Curves, Profile, Underside } from '../../../models/curves/curves.ts';
import {
  arc,
  type Chain,
  distance,
  line,
  nearestOn,
  type Point,
  type Segment,
} from '../../../models/curves/segment.ts';
import { heightOn, insetProfile, topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { bothSides, halfLengthOf } from './outlinePieces.ts';
import type { Pen, Shape, ShapeName } from './shape.ts';

/** How far the soundboard is drawn beyond the tips, mm. */
const BEYOND = 3;

/** The long profile seen from the tail, x to the right, z up. `soundboard` is undefined where none can be told. */
export function elevationShapes(curves: Curves, soundboard: Underside | undefined): readonly Shape[] {
  const half = halfLengthOf(curves.outline);
  const shape = (name: ShapeName, pen: Pen, chain: Chain, closed = false): Shape => ({
    name,
    view: 'elevation',
    pen,
    chain,
    closed,
  });
  const below = gluedFace(curves.underside, half);
  const top = edgedTop(curves, half);
  const [topEnd, floor] = [top[top.length - 1] as Segment, below[0] as Segment];
  const face = line(floor.to, topEnd.to);
  const body: Chain = [...below, face, ...backwards(top), ...mirrorImage([face])];
  const middle = (curves.profile.chain.length - 1) / 2;
  const piece = (n: number) => curves.profile.chain[middle + n];
  const named = (name: ShapeName, s: Segment | undefined) =>
    (s ? bothSides(s) : []).map((chain) => shape(name, 'none', chain));
  const { edge } = curves;
  return [
    ...(soundboard ? [shape('soundboard', 'detail', gluedFace(soundboard, half + BEYOND))] : []),
    ...(edge.kind === 'none'
      ? []
      : [shape('topEdge', 'detail', clipped(insetProfile(curves.profile, edge.size), half))]),
    shape('centreLine', 'chain', [line([0, -1.5], [0, curves.profile.thickness + 1.5])]),
    shape('body', 'outline', body, true),
    shape('crown', 'none', [piece(0) as Segment]),
    ...named('shoulders', piece(1)),
    ...named('blends', piece(2)),
    ...clipped(curves.profile.chain.slice(middle + 3), half).flatMap((s) => named('wings', s)),
    ...named('tipFaces', face),
    shape('underside', 'none', below),
  ];
}

/** The glue face on the line y = 0, from left to right, mm. */
function gluedFace(face: Underside, half: number): Chain {
  const z = undersideHeight(face, half, 0);
  const [from, to]: readonly [Point, Point] = [
    [-half, z],
    [half, z],
  ];
  return [face.shape === 'flat' ? line(from, to) : arc(from, to, [0, -face.radius], -1)];
}

/** The part of a left-to-right chain within half a length of the middle. */
function clipped(chain: Chain, half: number): Chain {
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
