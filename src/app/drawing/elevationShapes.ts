import type { Curves, Underside } from '../../../models/curves/curves.ts';
import { clipped, elevationOutline, gluedFace } from '../../../models/curves/elevationOutline.ts';
import { bothSides, halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import { type Chain, line, type Segment } from '../../../models/curves/segment.ts';
import { insetProfile } from '../../../models/curves/topHeight.ts';
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
  const { body, below, face } = elevationOutline(curves);
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
