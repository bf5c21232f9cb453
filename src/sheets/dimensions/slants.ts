import type { Point } from '../../../models/curves/segment.ts';
import type { Pointing } from './leader.ts';

/** Up and down from a place on a dimension's own line, at slants. */
export function slants(tip: Point): readonly Pointing[] {
  return [250, 110, 235, 125, 290, 70].map((degrees) => {
    const a = (degrees * Math.PI) / 180;
    return { tip, way: [Math.cos(a), Math.sin(a)] };
  });
}
