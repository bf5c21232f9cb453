import type { Path } from '../kernel/recognised.ts';
import type { Vector } from '../kernel/vectors.ts';

/** The straight from one point to another. */
export function straight(from: Vector, to: Vector): Path {
  return (t) => [
    from[0] + t * (to[0] - from[0]),
    from[1] + t * (to[1] - from[1]),
    from[2] + t * (to[2] - from[2]),
  ];
}
