import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, DataTexture, LinearFilter, type Plane, PlaneGeometry } from 'three';
import type { PartMesh } from '../../../workers/protocol.ts';
import { boardMaterial, colourBoard } from './boardMaterial.ts';
import { grainTexture } from './grainTexture.ts';
import type { Box } from './meshFigures.ts';
import type { Palette } from './palette.ts';
import { shadeMap } from './shadeMap.ts';
import { useDispose } from './useDispose.ts';
import { colourWood, woodMaterial } from './woodMaterial.ts';

interface Props {
  readonly mesh: PartMesh;
  readonly box: Box;
  readonly palette: Palette;
  /** 0 … 1: how far the part has faded into the paper. */
  readonly fade: number;
  /** What a section keeps. */
  readonly clip: readonly Plane[];
}

/** The wood, and its shadow on the board. */
export function Part({ mesh, box, palette, fade, clip }: Props) {
  const geometry = useMemo(() => geometryOf(mesh), [mesh]);
  const shade = useMemo(() => shadeTexture(mesh, box), [mesh, box]);
  const grain = useMemo(grainTexture, []);
  const wood = useMemo(() => woodMaterial(grain), [grain]);
  const board = useMemo(boardMaterial, []);
  const ground = useMemo(() => new PlaneGeometry(1, 1), []);
  useDispose(geometry);
  useDispose(shade);
  useDispose(grain);
  useDispose(wood);
  useDispose(board);
  useDispose(ground);

  const [xMin, yMin, width, height] = shade.userData.plan;
  const [plane] = clip;
  useEffect(() => {
    for (const { uniforms } of [wood, board]) {
      uniforms.shade.value = shade;
      uniforms.shadePlan.value.set(...shade.userData.plan);
    }
    wood.uniforms.heights.value = [box[2], box[5]];
    board.uniforms.cut.value.set(plane?.normal.x ?? 0, plane?.normal.y ?? 0, 0, plane?.constant ?? 100);
    // A cut through the height leaves the ground covered.
    if (plane?.normal.z) board.uniforms.cut.value.set(0, 0, 0, 100);
    colourWood(wood, palette, fade);
    colourBoard(board, palette);
  }, [wood, board, shade, box, palette, fade, plane]);

  return (
    <>
      <mesh geometry={geometry} material={wood} material-clippingPlanes={clip} />
      <mesh
        geometry={ground}
        material={board}
        position={[xMin + width / 2, yMin + height / 2, box[2] - 0.05]}
        scale={[width, height, 1]}
      />
    </>
  );
}

function geometryOf({ positions, normals, triangles }: PartMesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(normals, 3));
  geometry.setIndex(new BufferAttribute(triangles, 1));
  return geometry;
}

function shadeTexture({ positions, triangles }: PartMesh, box: Box) {
  const { data, columns, rows, plan } = shadeMap(positions, triangles, box);
  const texture = new DataTexture(data, columns, rows);
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearFilter;
  texture.needsUpdate = true;
  return Object.assign(texture, { userData: { plan } });
}
