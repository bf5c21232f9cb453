import type { TopoDS_Edge, TopoDS_Shape } from 'replicad-opencascadejs';
import type { Kernel } from './kernel.ts';
import { KernelError } from './kernelError.ts';
import type { Scope } from './scope.ts';
import type { Vector } from './shapes.ts';

/** Every edge of a shape, once each. */
export function edgesOf(kernel: Kernel, scope: Scope, shape: TopoDS_Shape): readonly TopoDS_Edge[] {
  const { oc } = kernel;
  const seen = new Map<number, TopoDS_Shape[]>();
  const out: TopoDS_Edge[] = [];
  const walk = scope.own(new oc.TopExp_Explorer(shape, 'TopAbs_EDGE', 'TopAbs_SHAPE'));
  for (; walk.More(); walk.Next()) {
    const edge = scope.own(walk.Current());
    const hash = oc.ReplicadShapeHasher.HashCode(edge, 2147483647);
    const alike = seen.get(hash) ?? [];
    if (alike.some((other) => other.IsSame(edge))) continue;
    seen.set(hash, [...alike, edge]);
    out.push(scope.own(oc.TopoDS.Edge(edge)));
  }
  return out;
}

/** `count` points along an edge, ends included. */
export function samplesOf(kernel: Kernel, edge: TopoDS_Edge, count: number): readonly Vector[] {
  const curve = new kernel.oc.BRepAdaptor_Curve(edge);
  try {
    const [first, last] = [curve.FirstParameter(), curve.LastParameter()];
    return Array.from({ length: count }, (_, i): Vector => {
      const p = curve.EvalD0(first + ((last - first) * i) / (count - 1));
      const xyz: Vector = [p.X(), p.Y(), p.Z()];
      p.delete();
      return xyz;
    });
  } finally {
    curve.delete();
  }
}

/** Rounds edges over with a ball of `radius` mm. */
export function roundOver(
  kernel: Kernel,
  scope: Scope,
  shape: TopoDS_Shape,
  edges: readonly TopoDS_Edge[],
  radius: number,
): TopoDS_Shape {
  const fillet = scope.own(new kernel.oc.BRepFilletAPI_MakeFillet(shape));
  for (const edge of edges) fillet.Add(radius, edge);
  return finish(kernel, scope, fillet);
}

/** Chamfers edges by `width` mm on both faces. */
export function chamfer(
  kernel: Kernel,
  scope: Scope,
  shape: TopoDS_Shape,
  edges: readonly TopoDS_Edge[],
  width: number,
): TopoDS_Shape {
  const bevel = scope.own(new kernel.oc.BRepFilletAPI_MakeChamfer(shape));
  for (const edge of edges) bevel.Add(width, edge);
  return finish(kernel, scope, bevel);
}

type EdgeTool = InstanceType<
  Kernel['oc']['BRepFilletAPI_MakeFillet'] | Kernel['oc']['BRepFilletAPI_MakeChamfer']
>;

function finish(kernel: Kernel, scope: Scope, tool: EdgeTool): TopoDS_Shape {
  tool.Build(scope.own(new kernel.oc.Message_ProgressRange()));
  if (!tool.IsDone()) throw new KernelError('edge', 'the kernel could not run the edge all the way round');
  return scope.own(tool.Shape());
}
