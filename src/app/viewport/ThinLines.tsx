import { type Ref, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, type LineSegments, type Plane } from 'three';
import { useDispose } from './useDispose.ts';

interface Props {
  /** xyz pairs, mm: separate segments. */
  readonly segments: Float32Array;
  readonly colour: string;
  readonly clip?: readonly Plane[];
  readonly ref?: Ref<LineSegments>;
}

/** Line segments one device pixel wide: a thousand of them cost next to nothing. */
export function ThinLines({ segments, colour, clip = NOTHING, ref }: Props) {
  const geometry = useMemo(
    () => new BufferGeometry().setAttribute('position', new BufferAttribute(segments, 3)),
    [segments],
  );
  useDispose(geometry);
  return (
    <lineSegments {...(ref && { ref })} geometry={geometry}>
      <lineBasicMaterial color={colour} clippingPlanes={clip as Plane[]} />
    </lineSegments>
  );
}

const NOTHING: readonly Plane[] = [];
