import { useMemo } from 'react';
import { DataTexture, LinearFilter, Vector4 } from 'three';
import type { PartMesh } from '../../../workers/protocol.ts';
import type { Box } from './meshFigures.ts';
import { shadeMap } from './shadeMap.ts';
import { useDispose } from './useDispose.ts';

/** A mesh's shade map as the materials take it. */
export interface Shade {
  readonly texture: DataTexture;
  /** xMin, yMin, width, height, mm */
  readonly plan: Vector4;
}

export function useShade(mesh: PartMesh, box: Box): Shade {
  const shade = useMemo(() => {
    const { data, columns, rows, plan } = shadeMap(mesh.positions, mesh.triangles, box);
    const texture = new DataTexture(data, columns, rows);
    texture.magFilter = LinearFilter;
    texture.minFilter = LinearFilter;
    texture.needsUpdate = true;
    return { texture, plan: new Vector4(...plan) };
  }, [mesh, box]);
  useDispose(shade.texture);
  return shade;
}
