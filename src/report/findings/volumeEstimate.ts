import { chainLength, polygon } from '../../../models/curves/chain.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';

/** How far polygon and outline may part, and the longest piece of a side, mm. */
const [DEVIATION, PIECE] = [0.1, 2];

/**
 * About the volume of the wood, its holes reamed, mm³: a hundred times quicker than the surface's own figure, which it
 * differs from by a share that hardly changes as one dimension does. For comparing near designs with each other only.
 */
export function volumeEstimate(curves: Curves): number {
  const { profile, underside, slot, edge, outline } = curves;
  const height = (x: number) => topHeight(profile, x) - undersideHeight(underside, x, 0);
  // Green's theorem: −∮ y·h(x) dx round the outline is the volume under h
  let body = 0;
  const points = polygon(outline, DEVIATION);
  points.forEach((from, i) => {
    const to = points[(i + 1) % points.length] ?? from;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const pieces = Math.max(1, Math.ceil(Math.abs(dx) / PIECE));
    for (let k = 0; k < pieces; k++) {
      const t = (k + 0.5) / pieces;
      body -= ((from[1] + t * dy) * height(from[0] + t * dx) * dx) / pieces;
    }
  });
  const corner = edge.kind === 'none' ? 0 : edge.size ** 2 * (edge.kind === 'round' ? 1 - Math.PI / 4 : 0.5);
  const holes = curves.pins.reduce(
    (sum, { outline: { reamed }, top }) => sum + Math.PI * holeRadius(reamed, top / 2) ** 2 * top,
    0,
  );
  const cut = 2 * slot.halfLength * slot.width * slot.depth;
  return body - corner * chainLength(outline) - holes - cut;
}
