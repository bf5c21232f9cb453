import { backwards, mirrorImage } from '../../../models/curves/chain.ts';
import type { Curves, Profile, Underside } from '../../../models/curves/curves.ts';
import {
  arc,
  type Chain,
  line,
  nearestOn,
  type Point,
  pointAt,
  type Segment,
} from '../../../models/curves/segment.ts';
import { heightOn, insetProfile, topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { bothSides } from './outlinePieces.ts';
import type { Pen, Shape, ShapeName } from './shape.ts';

/** How far the soundboard is drawn beyond the tips, mm. */
const BEYOND = 3;

/** The long profile seen from the tail, x to the right, z up. `soundboard` is undefined where none can be told. */
export function elevationShapes(curves: Curves, soundboard: Underside | undefined): readonly Shape[] {
  const half = halfLengthOf(curves);
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

/** Half the bridge's length, mm: how far its outline reaches. */
export function halfLengthOf({ outline }: Curves): number {
  return Math.max(...outline.map((s) => pointAt(s, 0.5)[0]));
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
function edgedTop(curves: Curves, half: number): Chain {
  const { profile, edge } = curves;
  if (edge.kind === 'none') return clipped(profile.chain, half);
  const inset = insetProfile(profile, edge.size);
  const end = edge.kind === 'round' ? rounded(profile, inset, edge.size, half) : undefined;
  const from: Point = end ? end.from : [half - edge.size, topHeight(profile, half - edge.size)];
  const off = end ?? line(from, [half, heightOn(inset, half)]);
  return [...mirrorImage([off]), ...clipped(profile.chain, from[0]), off];
}

/** The round-over at the right tip: it touches the tip's face and the top, as a ball rolled along them does. */
function rounded(profile: Profile, inset: Chain, radius: number, half: number): Segment | undefined {
  const centre: Point = [half - radius, heightOn(inset, half - radius)];
  const touch = profile.chain
    .map((s) => nearestOn(s, centre))
    .reduce((best, n) => (n.distance < best.distance ? n : best)).point;
  return touch[0] < half ? arc(touch, [half, centre[1]], centre, -1) : undefined;
}
