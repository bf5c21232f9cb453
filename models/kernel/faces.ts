import { chebyshev, fitBezier, polesThrough } from './bezier.ts';
import type { Face, Kernel } from './kernel.ts';
import { KernelError } from './kernelError.ts';
import type { Scope } from './scope.ts';
import { point, type Vector } from './shapes.ts';
import type { Surface } from './surfaces.ts';

/** A smooth piece of a boundary, from t = 0 to 1. */
export type Path = (t: number) => Vector;

/** How near a boundary's or a band's Bézier piece is asked to come, and how far off it may be at worst, mm. */
export const FIT = { asked: 1e-7, allowed: 2e-4 } as const;

/** Degree across a band that is round: a quarter turn comes out within a millionth of its radius. */
const ROUND = 6;

/** The part of a surface that a closed chain of paths on it bounds. */
export function trimmedFace(kernel: Kernel, scope: Scope, surface: Surface, loop: readonly Path[]): Face {
  const { oc } = kernel;
  const wire = scope.own(new oc.BRepBuilderAPI_MakeWire());
  for (const path of loop) {
    const poles = fitted((t) => surface.uv(path(t)));
    const degree = poles.length - 1;
    const array = scope.own(new oc.NCollection_Array1_gp_Pnt2d(1, degree + 1));
    const [ru, rv] = surface.radii;
    poles.forEach(([u = 0, v = 0], i) => {
      array.SetValue(i + 1, scope.own(new oc.gp_Pnt2d(u / ru, v / rv)));
    });
    const { knots, multiplicities } = ends(kernel, scope, degree);
    const curve = scope.own(new oc.Geom2d_BSplineCurve(array, knots, multiplicities, degree, false));
    wire.Add(scope.own(scope.own(new oc.BRepBuilderAPI_MakeEdge(curve, surface.handle)).Edge()));
    if (!wire.IsDone()) throw new KernelError('body', 'a face’s boundary does not hang together');
  }
  const face = scope.own(new oc.BRepBuilderAPI_MakeFace(surface.handle, scope.own(wire.Wire()), true)).Face();
  oc.BRepLib.BuildCurves3d(scope.own(face));
  return face;
}

/**
 * The face that a line across a band sweeps: at t (0 to 1) along, from a share across it (0 to 1). Flat bands are ruled,
 * round ones bent across as well.
 */
export function bandFace(
  kernel: Kernel,
  scope: Scope,
  band: (t: number) => (share: number) => Vector,
  bent: 'flat' | 'round',
): Face {
  const { oc } = kernel;
  const across = bent === 'flat' ? 1 : ROUND;
  const shares = chebyshev(across);
  const rows = fitted((t) => {
    const at = band(t);
    return shares.flatMap((share) => at(share));
  });
  const along = rows.length - 1;
  const array = scope.own(new oc.NCollection_Array2_gp_Pnt(1, along + 1, 1, across + 1));
  rows.forEach((row, i) => {
    polesThrough(shares.map((_, j) => row.slice(3 * j, 3 * j + 3))).forEach(([x = 0, y = 0, z = 0], j) => {
      array.SetValue(i + 1, j + 1, point(kernel, scope, [x, y, z]));
    });
  });
  const [u, v] = [ends(kernel, scope, along), ends(kernel, scope, across)];
  const surface = scope.own(
    new oc.Geom_BSplineSurface(
      array,
      u.knots,
      v.knots,
      u.multiplicities,
      v.multiplicities,
      along,
      across,
      false,
      false,
    ),
  );
  return scope.own(scope.own(new oc.BRepBuilderAPI_MakeFace(surface, FIT.asked)).Face());
}

function fitted(curve: (t: number) => readonly number[]): readonly (readonly number[])[] {
  const { poles, off } = fitBezier(curve, FIT.asked);
  if (!(off <= FIT.allowed)) throw new KernelError('body', `a boundary strays ${off.toExponential(1)} mm`);
  return poles;
}

/** Knots and multiplicities of a single Bézier piece. */
function ends(kernel: Kernel, scope: Scope, degree: number) {
  const knots = scope.own(new kernel.oc.NCollection_Array1_double(1, 2));
  const multiplicities = scope.own(new kernel.oc.NCollection_Array1_int(1, 2));
  for (const i of [1, 2]) {
    knots.SetValue(i, i - 1);
    multiplicities.SetValue(i, degree + 1);
  }
  return { knots, multiplicities };
}
