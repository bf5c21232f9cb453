import type { Chain, Point, Segment } from '../../../models/curves/segment.ts';

/** A chain turned about the origin. @param angle radians, counter-clockwise */
export function turned(chain: Chain, angle: number): Chain {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const at = ([x, y]: Point): Point => [x * c - y * s, x * s + y * c];
  return chain.map((piece): Segment => {
    const ends = { from: at(piece.from), to: at(piece.to) };
    return piece.kind === 'line' ? { ...piece, ...ends } : { ...piece, ...ends, centre: at(piece.centre) };
  });
}
