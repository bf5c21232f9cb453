import { useFrame } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import { type LineSegments, type Plane, PlaneGeometry } from 'three';
import { boardMaterial, colourBoard } from './boardMaterial.ts';
import { chainLines } from './chainLines.ts';
import type { Box } from './meshFigures.ts';
import type { Palette } from './palette.ts';
import { ThinLines } from './ThinLines.tsx';
import { useDispose } from './useDispose.ts';
import type { Shade } from './useShade.ts';

interface Props {
  readonly box: Box;
  readonly shade: Shade;
  readonly palette: Palette;
  readonly clip: readonly Plane[];
}

/** mm that the board lies below the part, so that neither cuts into the other. */
const CLEAR = 0.05;

/** What the part lies on: its shadow and its centre lines. From below there is nothing in the way. */
export function Board({ box, shade, palette, clip }: Props) {
  const material = useMemo(() => boardMaterial(), []);
  const geometry = useMemo(() => new PlaneGeometry(1, 1), []);
  const z = box[2] - CLEAR;
  const lines = useMemo(() => chainLines(box, z), [box, z]);
  const drawn = useRef<LineSegments>(null);
  useDispose(material);
  useDispose(geometry);

  const [plane] = clip;
  useEffect(() => {
    material.uniforms.shade.value = shade.texture;
    material.uniforms.shadePlan.value = shade.plan;
    // A cut through the height leaves the ground covered.
    if (plane && plane.normal.z === 0)
      material.uniforms.cut.value.set(plane.normal.x, plane.normal.y, 0, plane.constant);
    else material.uniforms.cut.value.set(0, 0, 0, 100);
    colourBoard(material, palette);
  }, [material, shade, palette, plane]);

  useFrame(({ camera }) => {
    if (drawn.current) drawn.current.visible = camera.position.z > z;
  });

  const { x, y, z: width, w: height } = shade.plan;
  return (
    <>
      <ThinLines ref={drawn} segments={lines} colour={palette.centre} />
      <mesh
        geometry={geometry}
        material={material}
        position={[x + width / 2, y + height / 2, z]}
        scale={[width, height, 1]}
      />
    </>
  );
}
