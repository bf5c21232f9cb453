import { type Chain, directionAt, type Point, type Segment } from './segment.ts';

/**
 * A closed counter-clockwise chain of tangent pieces moved inward by `by` mm along its normals. Every joint is
 * tangent, so the moved pieces meet again as long as no arc that turns left is smaller than `by`.
 */
export function offsetInward(chain: Chain, by: number): Chain {
  return chain.map((s): Segment => {
    const moved = (p: Point, t: number): Point => {
      const [dx, dy] = directionAt(s, t);
      return [p[0] - by * dy, p[1] + by * dx];
    };
    const ends = { from: moved(s.from, 0), to: moved(s.to, 1) };
    return s.kind === 'line' ? { ...s, ...ends } : { ...s, ...ends, radius: s.radius - s.turn * by };
  });
}
