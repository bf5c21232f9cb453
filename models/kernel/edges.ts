import type { TopoDS_Edge } from 'replicad-opencascadejs';
import { type Fitted, fitBezier } from './bezier.ts';
import { FIT } from './fit.ts';
import type { Kernel } from './kernel.ts';
import { type Path, recognised } from './recognised.ts';
import type { Scope } from './scope.ts';
import { point } from './shapes.ts';
import type { Surface } from './surfaces.ts';
import { minus } from './vectors.ts';

/**
 * An edge along a path on a surface. A line or a circle's arc is drawn in space and stays one in every file; anything
 * else is a Bézier piece in the surface's parameters.
 *
 * @param uv where the path runs in the surface's parameters, in mm
 */
export function edgeAlong(
  kernel: Kernel,
  scope: Scope,
  path: Path,
  surface: Pick<Surface, 'handle' | 'radii'>,
  uv: (t: number) => readonly [number, number],
): TopoDS_Edge {
  return inSpace(kernel, scope, path) ?? inParameters(kernel, scope, surface, uv);
}

function inSpace(kernel: Kernel, scope: Scope, path: Path): TopoDS_Edge | undefined {
  const { oc } = kernel;
  const drawn = recognised(path);
  if (!drawn) return undefined;
  const ends = [point(kernel, scope, drawn.from), point(kernel, scope, drawn.to)] as const;
  if (drawn.kind === 'line') return scope.own(scope.own(new oc.BRepBuilderAPI_MakeEdge(...ends)).Edge());
  const { from, centre, axis, radius } = drawn;
  const [up, start] = [scope.own(new oc.gp_Dir(...axis)), scope.own(new oc.gp_Dir(...minus(from, centre)))];
  const frame = scope.own(new oc.gp_Ax2(point(kernel, scope, centre), up, start));
  const circle = scope.own(new oc.gp_Circ(frame, radius));
  return scope.own(scope.own(new oc.BRepBuilderAPI_MakeEdge(circle, ...ends)).Edge());
}

function inParameters(
  kernel: Kernel,
  scope: Scope,
  surface: Pick<Surface, 'handle' | 'radii'>,
  uv: (t: number) => readonly [number, number],
): TopoDS_Edge {
  const { oc } = kernel;
  const [ru, rv] = surface.radii;
  const { poles } = fitted(uv);
  const degree = poles.length - 1;
  const array = scope.own(new oc.NCollection_Array1_gp_Pnt2d(1, degree + 1));
  poles.forEach(([u = 0, v = 0], i) => {
    array.SetValue(i + 1, scope.own(new oc.gp_Pnt2d(u / ru, v / rv)));
  });
  const { knots, multiplicities } = onePiece(kernel, scope, degree);
  const curve = scope.own(new oc.Geom2d_BSplineCurve(array, knots, multiplicities, degree, false));
  const edge = scope.own(scope.own(new oc.BRepBuilderAPI_MakeEdge(curve, surface.handle)).Edge());
  oc.BRepLib.BuildCurve3d(edge);
  return edge;
}

/** A Bézier piece as near as `FIT` allows. Throws when it strays further. */
export function fitted(curve: (t: number) => readonly number[]): Fitted {
  const found = fitBezier(curve, FIT.asked);
  if (!(found.off <= FIT.allowed)) {
    throw new Error(`a piece of a face strays ${found.off.toExponential(1)} mm`);
  }
  return found;
}

/** Knots and multiplicities of a single Bézier piece. */
export function onePiece(kernel: Kernel, scope: Scope, degree: number) {
  const knots = scope.own(new kernel.oc.NCollection_Array1_double(1, 2));
  const multiplicities = scope.own(new kernel.oc.NCollection_Array1_int(1, 2));
  for (const i of [1, 2]) {
    knots.SetValue(i, i - 1);
    multiplicities.SetValue(i, degree + 1);
  }
  return { knots, multiplicities };
}
