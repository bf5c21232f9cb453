import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, type Plane } from 'three';
import type { PartMesh } from '../../../workers/protocol.ts';
import { grainTexture } from './grainTexture.ts';
import type { Box } from './meshFigures.ts';
import type { Palette } from './palette.ts';
import { useDispose } from './useDispose.ts';
import type { Shade } from './useShade.ts';
import { colourWood, woodMaterial } from './woodMaterial.ts';

interface Props {
  readonly mesh: PartMesh;
  readonly box: Box;
  readonly shade: Shade;
  readonly palette: Palette;
  /** 0 … 1: how far the part has faded into the paper. */
  readonly fade: number;
  /** What a section keeps. */
  readonly clip: readonly Plane[];
}

/** The wood itself. */
export function Part({ mesh, box, shade, palette, fade, clip }: Props) {
  const geometry = useMemo(() => geometryOf(mesh), [mesh]);
  const grain = useMemo(() => grainTexture(), []);
  const wood = useMemo(() => woodMaterial(grain), [grain]);
  useDispose(geometry);
  useDispose(grain);
  useDispose(wood);

  useEffect(() => {
    wood.uniforms.shade.value = shade.texture;
    wood.uniforms.shadePlan.value = shade.plan;
    wood.uniforms.heights.value = [box[2], box[5]];
    colourWood(wood, palette, fade);
  }, [wood, shade, box, palette, fade]);

  return <mesh geometry={geometry} material={wood} material-clippingPlanes={clip} />;
}

function geometryOf({ positions, normals, triangles }: PartMesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(normals, 3));
  geometry.setIndex(new BufferAttribute(triangles, 1));
  return geometry;
}
