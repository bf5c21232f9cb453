import type { TopoDS_Shape } from 'replicad-opencascadejs';
import type { Kernel } from './kernel.ts';
import { KernelError } from './kernelError.ts';
import { scoped } from './scope.ts';

/** Binary STL whose facets stray at most `deviation` mm and `angle` radians from the solid. */
export function writeStl(kernel: Kernel, shape: TopoDS_Shape, deviation: number, angle: number): Uint8Array {
  const { oc } = kernel;
  const path = '/part.stl';
  oc.BRepTools.Clean(shape, false);
  scoped((scope) =>
    scope.own(new oc.BRepMesh_IncrementalMesh(shape, deviation, false, angle, kernel.threads)),
  );
  if (!oc.StlAPI.Write(shape, path, false))
    throw new KernelError('STL', 'the kernel could not write the facets');
  const bytes = oc.FS.readFile(path);
  oc.FS.unlink(path);
  return bytes;
}
