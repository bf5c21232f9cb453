import type { Kernel, Shape } from './kernel.ts';
import { scoped } from './scope.ts';
import type { Vector } from './vectors.ts';

export type Box = readonly [number, number, number, number, number, number];

/** Relative precision asked of volumes: without it the kernel's own choice is off by up to 7e-5. */
const PRECISION = 1e-5;

/** Volume (mm³) and centroid (mm) of a solid, integrated on its exact faces. */
export function volumeOf(
  kernel: Kernel,
  shape: Shape,
): { readonly volume: number; readonly centroid: Vector } {
  return scoped((scope) => {
    const g = scope.own(new kernel.oc.GProp_GProps());
    kernel.oc.BRepGProp.VolumeProperties(shape, g, PRECISION, false, false);
    const c = scope.own(g.CentreOfMass());
    return { volume: g.Mass(), centroid: [c.X(), c.Y(), c.Z()] };
  });
}

/**
 * Moments of inertia of a solid's volume, mm⁵, about axes through its centroid along the given directions: from six of
 * them comes its whole tensor.
 */
export function inertiaAbout(kernel: Kernel, shape: Shape, directions: readonly Vector[]): readonly number[] {
  return scoped((scope) => {
    const { oc } = kernel;
    const g = scope.own(new oc.GProp_GProps());
    oc.BRepGProp.VolumeProperties(shape, g, PRECISION, false, false);
    const centre = scope.own(g.CentreOfMass());
    return directions.map(([x, y, z]) => {
      const direction = scope.own(new oc.gp_Dir(x, y, z));
      return g.MomentOfInertia(scope.own(new oc.gp_Ax1(centre, direction)));
    });
  });
}

/** Surface area, mm². */
export function areaOf(kernel: Kernel, shape: Shape): number {
  return scoped((scope) => {
    const g = scope.own(new kernel.oc.GProp_GProps());
    kernel.oc.BRepGProp.SurfaceProperties(shape, g, false, false);
    return g.Mass();
  });
}

/** The tight box round the exact faces: [xMin, yMin, zMin, xMax, yMax, zMax], mm. */
export function boxOf(kernel: Kernel, shape: Shape): Box {
  return scoped((scope) => {
    const box = scope.own(new kernel.oc.Bnd_Box());
    kernel.oc.BRepBndLib.AddOptimal(shape, box, false, false);
    const [a, b] = [scope.own(box.CornerMin()), scope.own(box.CornerMax())];
    return [a.X(), a.Y(), a.Z(), b.X(), b.Y(), b.Z()];
  });
}

/** The kernel's own check of a shape. It doesn't notice lost holes: the gate does. */
export function isValid(kernel: Kernel, shape: Shape): boolean {
  return scoped((scope) => scope.own(new kernel.oc.BRepCheck_Analyzer(shape, true, false, false)).IsValid());
}

/** The solids a shape is made of. */
export function countSolids(kernel: Kernel, shape: Shape): number {
  return scoped((scope) => {
    const walk = scope.own(new kernel.oc.TopExp_Explorer(shape, 'TopAbs_SOLID', 'TopAbs_SHAPE'));
    let n = 0;
    for (; walk.More(); walk.Next()) n++;
    return n;
  });
}
