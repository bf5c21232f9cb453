import type { Geometry } from './geometry.ts';
import { meshBuffers } from './meshBuffers.ts';
import type { GeometryCall } from './protocol.ts';
import type { Service } from './serve.ts';

/** A geometry as the worker serves it. */
export function geometryService(geometry: Geometry): Service<GeometryCall> {
  return {
    threads: geometry.threads,
    heapBytes: () => geometry.heapBytes(),
    warmUp: (signal) => geometry.warmUp(signal),
    answer: {
      solid: ({ design, holes }, signal) => geometry.solid(design, holes, signal),
      file: ({ design, options }) => geometry.file(design, options),
      mesh: async ({ design, holes }) => ({ mesh: (await geometry.solid(design, holes)).mesh }),
    },
    transfer: (answer) => ('mesh' in answer ? meshBuffers(answer.mesh) : [answer.bytes.buffer]),
  };
}
