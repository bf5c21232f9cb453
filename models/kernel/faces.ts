import type { TopoDS_Edge } from 'replicad-opencascadejs';
import { chebyshev, polesThrough } from './bezier.ts';
import { edgeAlong, fitted, onePiece } from './edges.ts';
import { FIT } from './fit.ts';
import type { Face, Kernel } from './kernel.ts';
import type { Path } from './recognised.ts';
import type { Scope } from './scope.ts';
import { point } from './shapes.ts';
import { type Band, type Section, straightened } from './straightened.ts';
import type { Surface } from './surfaces.ts';

/** Degree across a band that is round: a quarter turn comes out within a millionth of its radius. */
const ROUND = 6;

/** The part of a surface that a closed chain of paths on it bounds. */
export function trimmedFace(kernel: Kernel, scope: Scope, surface: Surface, loop: readonly Path[]): Face {
  const edges = loop.map((path) => edgeAlong(kernel, scope, path, surface, (t) => surface.uv(path(t))));
  return faceWithin(kernel, scope, surface, edges);
}

/**
 * The face that a line across a band sweeps: part of a plane or of a cylinder where it is one, else a Bézier patch,
 * ruled where the line is straight.
 */
export function bandFace(kernel: Kernel, scope: Scope, band: Band, section: Section): Face {
  const sides: readonly Path[] = [
    (t) => band(t)(0),
    (share) => band(1)(share),
    (t) => band(1 - t)(1),
    (share) => band(0)(1 - share),
  ];
  const even = straightened(kernel, scope, band, section);
  if (even) return trimmedFace(kernel, scope, even, sides);

  const { oc } = kernel;
  const across = section === 'straight' ? 1 : ROUND;
  const shares = chebyshev(across);
  const { poles: rows } = fitted((t) => {
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
  const [u, v] = [onePiece(kernel, scope, along), onePiece(kernel, scope, across)];
  const handle = scope.own(
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
  const patch = { handle, radii: [1, 1], flat: false } as const;
  const corners = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  const edges = sides.map((path, i) => {
    const [[u0, v0], [u1, v1]] = [corners[i], corners[(i + 1) % 4]] as [[number, number], [number, number]];
    return edgeAlong(kernel, scope, path, patch, (t) => [u0 + t * (u1 - u0), v0 + t * (v1 - v0)]);
  });
  return faceWithin(kernel, scope, patch, edges);
}

function faceWithin(
  kernel: Kernel,
  scope: Scope,
  { handle, flat }: Pick<Surface, 'handle' | 'flat'>,
  edges: readonly TopoDS_Edge[],
): Face {
  const { oc } = kernel;
  const making = scope.own(new oc.BRepBuilderAPI_MakeWire());
  for (const edge of edges) {
    making.Add(edge);
    if (!making.IsDone()) throw new Error('the boundary of a face does not hang together');
  }
  const wire = scope.own(making.Wire());
  if (!flat) {
    // on planes the kernel finds by itself where lines and circles run in the parameters; elsewhere it must be asked
    const fix = scope.own(new oc.ShapeFix_Wire());
    fix.Load(wire);
    fix.SetSurface(handle);
    fix.SetPrecision(FIT.asked);
    fix.FixEdgeCurves();
  }
  return scope.own(scope.own(new oc.BRepBuilderAPI_MakeFace(handle, wire, true)).Face());
}
