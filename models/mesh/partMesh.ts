/** A triangle mesh of the part. Millimetres, outward, counter-clockwise. */
export interface PartMesh {
  /** xyz of each vertex */
  readonly positions: Float32Array;
  /** xyz of each vertex's unit normal */
  readonly normals: Float32Array;
  /** three vertex indices a triangle */
  readonly triangles: Uint32Array;
  /** xyz pairs: the part's edges as separate short lines */
  readonly edges: Float32Array;
}
