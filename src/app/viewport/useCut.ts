import { useMemo } from 'react';
import type { PartMesh } from '../../../workers/protocol.ts';
import { type Filled, fillLoops } from './fillLoops.ts';
import type { Section } from './section.ts';
import { type CutPoint, cutToSpace, type Loop, loopArea, sliceMesh } from './sliceMesh.ts';
import { weldVertices } from './weldVertices.ts';

export interface Cut {
  readonly section: Section;
  /** Around the face, as xyz pairs, mm. */
  readonly outline: Float32Array;
  readonly filled: Filled;
  readonly areaMm2: number;
}

/** The face that a section cuts through the mesh, made anew when either changes. */
export function useCut(mesh: PartMesh | undefined, section: Section | undefined): Cut | undefined {
  const cutting = section !== undefined;
  const welded = useMemo(() => (mesh && cutting ? weldVertices(mesh.positions) : undefined), [mesh, cutting]);
  return useMemo(() => {
    if (!mesh || !section || !welded) return undefined;
    const loops = sliceMesh(mesh.positions, mesh.triangles, welded, section.axis, section.at);
    const areaMm2 = loops.reduce((sum, loop) => sum + loopArea(loop), 0);
    return { section, outline: outlineOf(section, loops), filled: fillLoops(loops), areaMm2 };
  }, [mesh, section, welded]);
}

function outlineOf({ axis, at }: Section, loops: readonly Loop[]): Float32Array {
  const pairs = loops.flatMap((loop) =>
    loop.flatMap((point, i) => [
      ...cutToSpace(axis, at, point),
      ...cutToSpace(axis, at, loop[(i + 1) % loop.length] as CutPoint),
    ]),
  );
  return new Float32Array(pairs);
}
