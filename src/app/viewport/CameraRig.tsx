import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useRef } from 'react';
import { FIRST_VIEW } from './pose.ts';
import type { ViewRig } from './viewRig.ts';

/** The share of the view that the whole part fills at first, and when it is asked for whole. */
export const FILL = 0.68;

interface Props {
  readonly rig: ViewRig;
  readonly parallel: boolean;
  /** xyz triples, mm, of the part: the first ones are framed, later ones leave the camera alone. */
  readonly points: Float32Array | undefined;
  readonly onMove: () => void;
}

/** Puts the rig's camera to work in the canvas. */
export function CameraRig({ rig, parallel, points, onMove }: Props) {
  const { gl, size, set, invalidate } = useThree();
  const first = useRef<Float32Array>(undefined);

  useLayoutEffect(() => rig.connect(gl.domElement), [rig, gl]);

  useLayoutEffect(() => {
    rig.onMove = () => {
      invalidate();
      onMove();
    };
    return () => {
      rig.onMove = () => {};
    };
  }, [rig, invalidate, onMove]);

  useLayoutEffect(() => {
    rig.resize(size.width, size.height);
    rig.parallel = parallel;
    // `manual`: the rig, and not the canvas, fits the camera to the view's size.
    set({ camera: Object.assign(rig.camera, { manual: true as const }) });
    invalidate();
  }, [rig, size, parallel, set, invalidate]);

  // Until the view is first moved, it follows the size of the window as well.
  useEffect(() => {
    first.current ??= points;
    if (!first.current || rig.moved || size.width < 1) return;
    rig.pose = rig.framing(first.current, FIRST_VIEW, FILL);
  }, [rig, points, size]);

  useEffect(() => {
    const canvas = gl.domElement;
    const restored = () => invalidate();
    canvas.addEventListener('webglcontextrestored', restored);
    return () => canvas.removeEventListener('webglcontextrestored', restored);
  }, [gl, invalidate]);

  useFrame(() => rig.step());
  return null;
}
