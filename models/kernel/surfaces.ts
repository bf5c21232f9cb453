import type { Geom_Surface } from 'replicad-opencascadejs';
import type { Kernel } from './kernel.ts';
import type { Scope } from './scope.ts';
import { point } from './shapes.ts';
import { cross, dot, minus, type Vector } from './vectors.ts';

/** A surface without bounds, and where points on it lie in its own two parameters. */
export interface Surface {
  readonly handle: Geom_Surface;
  /** The parameters of a point on it, in mm: an angle times its radius. */
  uv(p: Vector): readonly [number, number];
  /** What to divide `uv` by for the kernel's own parameters. */
  readonly radii: readonly [number, number];
  /** Whether it is a plane. */
  readonly flat: boolean;
}

/** The plane through `origin` square to the unit vector `normal`, measured from `origin` along the unit vector `x`. */
export function plane(kernel: Kernel, scope: Scope, origin: Vector, normal: Vector, x: Vector): Surface {
  const { oc } = kernel;
  const y = cross(normal, x);
  // the kernel's planes can't be made by themselves, but a face has one
  const flat = scope.own(new oc.gp_Pln(frame(kernel, scope, origin, normal, x)));
  const face = scope.own(scope.own(new oc.BRepBuilderAPI_MakeFace(flat)).Face());
  return {
    handle: scope.own(oc.BRep_Tool.Surface(face)),
    uv: (p) => {
      const d = minus(p, origin);
      return [dot(d, x), dot(d, y)];
    },
    radii: [1, 1],
    flat: true,
  };
}

/**
 * The cylinder of `radius` round the axis through `origin` along the unit vector `axis`. `middle`, square to the axis,
 * points to what is used of it: the seam lies opposite.
 */
export function cylinder(
  kernel: Kernel,
  scope: Scope,
  origin: Vector,
  axis: Vector,
  middle: Vector,
  radius: number,
): Surface {
  const ahead = cross(axis, middle);
  const at = frame(kernel, scope, origin, axis, minus([0, 0, 0], middle));
  return {
    handle: scope.own(new kernel.oc.Geom_CylindricalSurface(at, radius)),
    uv: (p) => {
      const d = minus(p, origin);
      return [radius * (Math.PI + Math.atan2(dot(d, ahead), dot(d, middle))), dot(d, axis)];
    },
    radii: [radius, 1],
    flat: false,
  };
}

/**
 * The sphere of `radius` whose top is the part's origin. Its poles lie far out on ±Y and its seam below, so that none
 * falls in the wood.
 */
export function dome(kernel: Kernel, scope: Scope, radius: number): Surface {
  const at = frame(kernel, scope, [0, 0, -radius], [0, 1, 0], [0, 0, -1]);
  return {
    handle: scope.own(new kernel.oc.Geom_SphericalSurface(at, radius)),
    uv: ([x, y, z]) => [radius * (Math.PI + Math.atan2(x, z + radius)), radius * Math.asin(y / radius)],
    radii: [radius, radius],
    flat: false,
  };
}

function frame(kernel: Kernel, scope: Scope, origin: Vector, z: Vector, x: Vector) {
  const { oc } = kernel;
  const [up, ahead] = [scope.own(new oc.gp_Dir(...z)), scope.own(new oc.gp_Dir(...x))];
  return scope.own(new oc.gp_Ax3(point(kernel, scope, origin), up, ahead));
}
