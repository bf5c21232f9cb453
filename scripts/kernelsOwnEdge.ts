import type { TopoDS_Edge } from 'replicad-opencascadejs';
import { distanceTo } from '../models/curves/chain.ts';
import type { Curves } from '../models/curves/curves.ts';
import { topHeight } from '../models/curves/topHeight.ts';
import type { Kernel, Shape } from '../models/kernel/kernel.ts';
import type { Scope } from '../models/kernel/scope.ts';

/** How near an edge of the solid must lie to the curves to be the rim, mm. */
const NEAR = 5e-3;

/**
 * The kernel's own rolling ball over the rim of a body that has no edge yet: another program's answer to what our
 * round-over builds from its own surfaces. Throws what the kernel throws when it can't.
 */
export function kernelsOwnEdge(
  kernel: Kernel,
  scope: Scope,
  shape: Shape,
  { outline, profile }: Curves,
  radius: number,
): Shape {
  const { oc } = kernel;
  const fillet = scope.own(new oc.BRepFilletAPI_MakeFillet(shape));
  for (const edge of edgesOf(kernel, scope, shape)) {
    const onRim = pointsOf(kernel, scope, edge).every(
      ([x, y, z]) => Math.abs(z - topHeight(profile, x)) < NEAR && distanceTo(outline, [x, y]) < NEAR,
    );
    if (onRim) fillet.Add(radius, edge);
  }
  fillet.Build(scope.own(new oc.Message_ProgressRange()));
  if (!fillet.IsDone()) throw new Error('the kernel could not run its own edge all the way round');
  return scope.own(fillet.Shape());
}

/** Every edge of a shape, once each. */
function edgesOf(kernel: Kernel, scope: Scope, shape: Shape): readonly TopoDS_Edge[] {
  const { oc } = kernel;
  const out: TopoDS_Edge[] = [];
  const walk = scope.own(new oc.TopExp_Explorer(shape, 'TopAbs_EDGE', 'TopAbs_SHAPE'));
  for (; walk.More(); walk.Next()) {
    const edge = scope.own(oc.TopoDS.Edge(scope.own(walk.Current())));
    if (!out.some((other) => other.IsSame(edge))) out.push(edge);
  }
  return out;
}

function pointsOf(kernel: Kernel, scope: Scope, edge: TopoDS_Edge): readonly [number, number, number][] {
  const curve = scope.own(new kernel.oc.BRepAdaptor_Curve(edge));
  const [first, last] = [curve.FirstParameter(), curve.LastParameter()];
  return [0, 0.25, 0.5, 0.75, 1].map((t) => {
    const p = scope.own(curve.EvalD0(first + t * (last - first)));
    return [p.X(), p.Y(), p.Z()];
  });
}
