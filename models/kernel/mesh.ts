import type { PartMesh } from '../mesh/partMesh.ts';
import type { Kernel, Shape } from './kernel.ts';
import { scoped } from './scope.ts';

/**
 * Triangles of a shape that stray at most `deviation` mm and `angle` radians from it, and its edges as short lines.
 * Vertices on an edge stand once for each face, with that face's normal.
 */
export function meshOf(kernel: Kernel, shape: Shape, deviation: number, angle: number): PartMesh {
  const { oc } = kernel;
  // a finer mesh left on the shape would be kept as it is
  oc.BRepTools.Clean(shape, false);
  return scoped((scope) => {
    const faces = scope.own(oc.ReplicadMeshExtractor.extract(shape, deviation, angle, false));
    const lines = scope.own(oc.ReplicadEdgeMeshExtractor.extract(shape, deviation, angle));
    // views are taken last: they detach when the memory grows. Past 2 GB pointers come out negative.
    const memory = oc.wasmMemory.buffer;
    const floats = (at: number, n: number) => new Float32Array(memory, at >>> 0, n).slice();
    return {
      positions: floats(faces.getVerticesPtr(), faces.getVerticesSize()),
      normals: floats(faces.getNormalsPtr(), faces.getNormalsSize()),
      triangles: new Uint32Array(memory, faces.getTrianglesPtr() >>> 0, faces.getTrianglesSize()).slice(),
      edges: floats(lines.getLinesPtr(), lines.getLinesSize()),
    };
  });
}
