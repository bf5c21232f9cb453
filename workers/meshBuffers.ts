import type { PartMesh } from './protocol.ts';

/** The memory of a mesh, to be handed over instead of copied: a worker keeps no mesh that it has sent. */
export function meshBuffers({ positions, normals, triangles, edges }: PartMesh): readonly ArrayBufferLike[] {
  return [positions.buffer, normals.buffer, triangles.buffer, edges.buffer];
}
