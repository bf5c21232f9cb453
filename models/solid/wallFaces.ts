import type { Underside } from '../curves/curves.ts';
import type { Plan } from '../curves/rim/plan.ts';
import { directionAt, pointAt, type Segment } from '../curves/segment.ts';
import { trimmedFace } from '../kernel/faces.ts';
import type { Face, Kernel } from '../kernel/kernel.ts';
import type { Path } from '../kernel/recognised.ts';
import type { Scope } from '../kernel/scope.ts';
import { cylinder, plane, type Surface } from '../kernel/surfaces.ts';
import { footPaths } from './glueFace.ts';
import type { Stretches } from './rimStretches.ts';
import { straight } from './straight.ts';

/** The walls: one face a piece of the outline, from the glue face up to the rim. */
export function wallFaces(
  kernel: Kernel,
  scope: Scope,
  plan: Plan,
  underside: Underside,
  stretches: Stretches,
): readonly Face[] {
  return plan.pieces.map((piece, k) => {
    const foot = footPaths(piece, underside);
    const from = stretches.atWallJoint(k);
    const to = stretches.atWallJoint((k + 1) % plan.pieces.length);
    const upper: Path[] = [];
    for (let i = to > from ? to - 1 : to - 1 + stretches.count; i >= from; i--) {
      const path = stretches.path(i, 'wall');
      upper.push((t) => path(1 - t));
    }
    const up = straight((foot[foot.length - 1] as Path)(1), (upper[0] as Path)(0));
    const down = straight((upper[upper.length - 1] as Path)(1), (foot[0] as Path)(0));
    return trimmedFace(kernel, scope, surfaceOver(kernel, scope, piece), [...foot, up, ...upper, down]);
  });
}

function surfaceOver(kernel: Kernel, scope: Scope, piece: Segment): Surface {
  if (piece.kind === 'line') {
    const [dx, dy] = directionAt(piece, 0);
    return plane(kernel, scope, [...piece.from, 0], [dy, -dx, 0], [dx, dy, 0]);
  }
  const [x, y] = pointAt(piece, 0.5);
  const { centre, radius } = piece;
  const middle = [(x - centre[0]) / radius, (y - centre[1]) / radius, 0] as const;
  return cylinder(kernel, scope, [...centre, 0], [0, 0, 1], middle, radius);
}
