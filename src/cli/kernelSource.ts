import { isFatal } from '../../workers/failureOf.ts';
import type { Geometry } from '../../workers/geometry.ts';

/** Past 2 GB the kernel's pointers turn negative and it dies; one build takes less than the rest. */
const MOST_BYTES = 1.5e9;

/** The kernel for a long run: loaded when first asked for, and anew when it is spent. */
export interface KernelSource {
  /** Runs work on a kernel that is fit for use. */
  use<T>(work: (geometry: Geometry) => Promise<T>): Promise<T>;
}

/**
 * One thread: Node would start and keep threads of its own for the other kernel, and a call that makes one bridge
 * spends longer on loading than it would save.
 */
export function kernelSource(
  load: () => Promise<Geometry> = async () =>
    (await import('../../workers/loadGeometry.ts')).loadGeometry(false),
): KernelSource {
  let geometry: Geometry | undefined;
  return {
    async use(work) {
      if (geometry && geometry.heapBytes() > MOST_BYTES) {
        geometry.dispose();
        geometry = undefined;
      }
      geometry ??= await load();
      try {
        return await work(geometry);
      } catch (error) {
        // not even disposed of: what a trap leaves behind can't be trusted to free itself
        if (isFatal(error)) geometry = undefined;
        throw error;
      }
    },
  };
}
