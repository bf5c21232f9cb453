import { useFrame } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { BufferGeometry, Float32BufferAttribute } from 'three';
import { colourCut, cutMaterial, hatchSpacing } from './cutMaterial.ts';
import type { Palette } from './palette.ts';
import { cutToSpace } from './sliceMesh.ts';
import type { Cut } from './useCut.ts';
import { useDispose } from './useDispose.ts';
import type { ViewRig } from './viewRig.ts';
import { WideLines } from './WideLines.tsx';

interface Props {
  readonly cut: Cut;
  readonly rig: ViewRig;
  readonly palette: Palette;
  readonly fade: number;
}

/** The hatched face of a section, and the line around it. */
export function CutFace({ cut, rig, palette, fade }: Props) {
  const material = useMemo(cutMaterial, []);
  const geometry = useMemo(() => faceOf(cut), [cut]);
  useDispose(material);
  useDispose(geometry);
  useEffect(() => colourCut(material, palette, fade), [material, palette, fade]);
  useFrame(() => {
    material.uniforms.spacing.value = hatchSpacing(rig.mmPerPixel);
  });
  return (
    <>
      <mesh geometry={geometry} material={material} />
      <WideLines segments={cut.outline} colour={palette.ink} width={1.5} clip={NOTHING} order={2} />
    </>
  );
}

const NOTHING = [] as const;

function faceOf({ section: { axis, at }, filled }: Cut): BufferGeometry {
  const geometry = new BufferGeometry();
  const places = filled.points.flatMap((point) => cutToSpace(axis, at, point));
  geometry.setAttribute('position', new Float32BufferAttribute(places, 3));
  geometry.setAttribute('inCut', new Float32BufferAttribute(filled.points.flat(), 2));
  geometry.setIndex([...filled.triangles]);
  return geometry;
}
