import { distanceTo } from '../curves/chain.ts';
import type { Curves } from '../curves/curves.ts';
import { topHeight } from '../curves/topHeight.ts';
import { chamfer, edgesOf, roundOver, samplesOf } from '../kernel/edges.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import { KernelError } from '../kernel/kernelError.ts';
import type { Scope } from '../kernel/scope.ts';

/** How near an edge of the solid must lie to the curves it was cut by to be taken for theirs, mm. */
const NEAR = 5e-3;

/** The body with the edge all round its top rounded over or chamfered. */
export function edging(kernel: Kernel, scope: Scope, shape: Shape, curves: Curves): Shape {
  const { edge, outline, profile } = curves;
  if (edge.kind === 'none') return shape;
  const rim = edgesOf(kernel, scope, shape).filter((e) =>
    samplesOf(kernel, e, 5).every(
      ([x, y, z]) => Math.abs(z - topHeight(profile, x)) < NEAR && distanceTo(outline, [x, y]) < NEAR,
    ),
  );
  if (rim.length === 0) throw new KernelError('edge', 'the rim of the top was not found on the solid');
  return edge.kind === 'round'
    ? roundOver(kernel, scope, shape, rim, edge.size)
    : chamfer(kernel, scope, shape, rim, edge.size);
}
