import type { TopoDS_Shape } from 'replicad-opencascadejs';
import type { Kernel } from './kernel.ts';
import { KernelError } from './kernelError.ts';
import { scoped } from './scope.ts';

/** Bytes before the count of facets, free for a remark. */
const HEADER = 80;

/**
 * Binary STL whose facets stray at most `deviation` mm and `angle` radians from the solid. Its head says what it is
 * called and, since STL has no units, that it is millimetres.
 */
export function writeStl(
  kernel: Kernel,
  shape: TopoDS_Shape,
  name: string,
  deviation: number,
  angle: number,
): Uint8Array {
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
  bytes.set(stlHeader(name));
  return bytes;
}

/** `Pinbridge, NAME, mm` in 80 bytes, a long name cut short. It must not begin with "solid", as ASCII STL does. */
export function stlHeader(name: string): Uint8Array {
  const [before, after] = ['Pinbridge, ', ', mm'];
  const header = new Uint8Array(HEADER);
  const encoder = new TextEncoder();
  encoder.encodeInto(before, header);
  // takes whole characters only
  const { written } = encoder.encodeInto(name, header.subarray(before.length, HEADER - after.length));
  encoder.encodeInto(after, header.subarray(before.length + written));
  return header;
}
