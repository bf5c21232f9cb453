import type { Top } from '../curves/rim/top.ts';
import { directionAt, pointAt, type Segment } from '../curves/segment.ts';
import { trimmedFace } from '../kernel/faces.ts';
import type { Face, Kernel } from '../kernel/kernel.ts';
import type { Path } from '../kernel/recognised.ts';
import type { Scope } from '../kernel/scope.ts';
import { cylinder, plane, type Surface } from '../kernel/surfaces.ts';
import type { Stretches } from './rimStretches.ts';
import { straight } from './straight.ts';

/** The faces of the top inside the rim: one for each piece of the profile that reaches it. */
export function topFaces(kernel: Kernel, scope: Scope, top: Top, stretches: Stretches): readonly Face[] {
  const { topJoints } = stretches;
  const joints = top.joints(0);
  return Array.from({ length: topJoints.length + 1 }, (_, i) => {
    const [left, right] = [topJoints[i - 1], topJoints[i]];
    const loop = loopBetween(
      stretches,
      left === undefined ? Number.NEGATIVE_INFINITY : (joints[left] as number),
      right === undefined ? Number.POSITIVE_INFINITY : (joints[right] as number),
    );
    // the piece that ends at the right joint or begins at the left; with no joint in reach, the one over the middle
    const k = right ?? (left === undefined ? joints.filter((x) => x < 0).length : left + 1);
    const piece = top.pieces[k] as Segment;
    return trimmedFace(kernel, scope, surfaceUnder(kernel, scope, piece), loop);
  });
}

/** The boundary of the top between two joints: the rim's stretches there, and the joints' straights between them. */
function loopBetween(stretches: Stretches, left: number, right: number): readonly Path[] {
  const { count, path } = stretches;
  const isIn = (i: number) => {
    const [x] = path(i, 'top')(0.5);
    return x > left && x < right;
  };
  const all = Array.from({ length: count }, (_, i) => i);
  const first = all.find((i) => isIn(i) && !isIn(i - 1)) ?? 0;
  const inside = all.map((i) => first + i).filter(isIn);
  return inside.flatMap((i, k) => {
    const next = inside[(k + 1) % inside.length] as number;
    const here = path(i, 'top');
    return (next - i - 1) % count === 0 ? [here] : [here, straight(here(1), path(next, 'top')(0))];
  });
}

function surfaceUnder(kernel: Kernel, scope: Scope, piece: Segment): Surface {
  if (piece.kind === 'line') {
    const [dx, dz] = directionAt(piece, 0);
    return plane(kernel, scope, [piece.from[0], 0, piece.from[1]], [-dz, 0, dx], [dx, 0, dz]);
  }
  const [x, z] = pointAt(piece, 0.5);
  const { centre, radius } = piece;
  const middle = [(x - centre[0]) / radius, 0, (z - centre[1]) / radius] as const;
  return cylinder(kernel, scope, [centre[0], 0, centre[1]], [0, 1, 0], middle, radius);
}
