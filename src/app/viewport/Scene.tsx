import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import type { Plane } from 'three';
import type { PartMesh } from '../../../workers/protocol.ts';
import { Board } from './Board.tsx';
import { CutFace } from './CutFace.tsx';
import type { SortedEdges } from './litEdges.ts';
import type { Box } from './meshFigures.ts';
import { Part } from './Part.tsx';
import { DARK, LIGHT } from './palette.ts';
import { planeOf } from './section.ts';
import type { Stamp } from './stamp.ts';
import { ThinLines } from './ThinLines.tsx';
import type { Cut } from './useCut.ts';
import { useShade } from './useShade.ts';
import type { ViewRig } from './viewRig.ts';
import { WideLines } from './WideLines.tsx';
import { woodColours } from './woodColours.ts';

const NOTHING: readonly Plane[] = [];

interface Props {
  readonly mesh: PartMesh;
  readonly box: Box;
  readonly rig: ViewRig;
  readonly stamp: Stamp;
  readonly dark: boolean;
  readonly edges: boolean;
  readonly cut: Cut | undefined;
  /** The edges of what is selected, and the others: one drawn over the other would speckle. */
  readonly sorted: SortedEdges;
  readonly wood: string;
  /** Where the chosen finding is, xyz pairs. */
  readonly found: Float32Array;
}

/** Everything inside the canvas but the camera. */
export function Scene({ mesh, box, rig, stamp, dark, edges, cut, sorted, wood, found }: Props) {
  const { gl, invalidate } = useThree();
  const palette = useMemo(() => ({ ...(dark ? DARK : LIGHT), ...woodColours(wood) }), [dark, wood]);
  const section = cut?.section;
  const clip = useMemo(() => (section ? [planeOf(section)] : []), [section]);
  const shade = useShade(mesh, box);
  const fade = stamp === 'stale' ? 0.3 : 0;

  useEffect(() => {
    gl.toneMappingExposure = palette.exposure;
    invalidate();
  });

  return (
    <>
      <Part mesh={mesh} box={box} shade={shade} palette={palette} fade={fade} clip={clip} />
      <Board box={box} shade={shade} palette={palette} clip={clip} />
      {edges && (
        <ThinLines
          segments={sorted.plain}
          colour={stamp === 'solid' ? palette.edge : palette.draftEdge}
          clip={clip}
        />
      )}
      {cut && <CutFace cut={cut} rig={rig} palette={palette} fade={fade} />}
      {sorted.lit.length > 0 && (
        <WideLines segments={sorted.lit} colour={palette.mark} width={2.4} clip={clip} order={1} />
      )}
      {found.length > 0 && (
        <WideLines segments={found} colour={palette.found} width={3.2} clip={NOTHING} order={3} through />
      )}
    </>
  );
}
