import { useEffect, useMemo } from 'react';
import type { Plane } from 'three';
import { LineMaterial } from 'three/examples/jsm/lines/LineMaterial.js';
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js';
import { useDispose } from './useDispose.ts';

interface Props {
  /** xyz pairs, mm: separate segments. */
  readonly segments: Float32Array;
  readonly colour: string;
  /** CSS pixels. */
  readonly width: number;
  readonly clip: readonly Plane[];
  /** Drawn after, and so over, lines of a lower order. */
  readonly order?: number;
  /** Seen through the wood too. */
  readonly through?: boolean;
}

/** Line segments of an even width on the screen. Dear where there are many: see `ThinLines`. */
export function WideLines({ segments, colour, width, clip, order = 0, through = false }: Props) {
  const material = useMemo(() => new LineMaterial({ clipping: true }), []);
  const geometry = useMemo(() => new LineSegmentsGeometry().setPositions(segments), [segments]);
  useDispose(material);
  useDispose(geometry);
  const lines = useMemo(() => new LineSegments2(geometry, material), [geometry, material]);
  useEffect(() => {
    material.color.set(colour);
    material.linewidth = width;
    material.depthTest = !through;
    material.needsUpdate = true;
  }, [material, colour, width, through]);
  return <primitive object={lines} material-clippingPlanes={clip} renderOrder={order} />;
}
