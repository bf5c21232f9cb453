import type { Underside } from '../curves/curves.ts';
import type { Plan } from '../curves/rim/plan.ts';
import { pointAt, type Segment, sweepOf } from '../curves/segment.ts';
import { undersideHeight } from '../curves/underside.ts';
import { trimmedFace } from '../kernel/faces.ts';
import type { Face, Kernel } from '../kernel/kernel.ts';
import type { Path } from '../kernel/recognised.ts';
import type { Scope } from '../kernel/scope.ts';
import { cylinder, dome, plane, type Surface } from '../kernel/surfaces.ts';

/** Longest turn that one piece of a foot's line makes, radians. */
const LONGEST_TURN = 1.7;

/** The face that is glued to the soundboard. */
export function glueFace(kernel: Kernel, scope: Scope, plan: Plan, underside: Underside): Face {
  const loop = plan.pieces.flatMap((piece) => footPaths(piece, underside));
  return trimmedFace(kernel, scope, surfaceOf(kernel, scope, underside), loop);
}

/** The line in which a wall stands on the glue face. */
export function footPaths(piece: Segment, underside: Underside): readonly Path[] {
  const parts = piece.kind === 'line' ? 1 : Math.ceil(sweepOf(piece) / LONGEST_TURN);
  return Array.from(
    { length: parts },
    (_, i): Path =>
      (t) => {
        const [x, y] = pointAt(piece, (i + t) / parts);
        return [x, y, undersideHeight(underside, x, y)];
      },
  );
}

function surfaceOf(kernel: Kernel, scope: Scope, underside: Underside): Surface {
  if (underside.shape === 'flat') return plane(kernel, scope, [0, 0, 0], [0, 0, 1], [1, 0, 0]);
  const { shape, radius } = underside;
  if (shape === 'sphere') return dome(kernel, scope, radius);
  return cylinder(kernel, scope, [0, 0, -radius], [0, 1, 0], [0, 0, 1], radius);
}
