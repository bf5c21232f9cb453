import type { OpenCascadeInstance } from 'replicad-opencascadejs';
import type { Kernel } from './kernel.ts';

export interface KernelPlace {
  /** Several threads: only where memory can be shared (a cross-origin isolated page, or Node). */
  readonly threads: boolean;
  /** Where the kernel's wasm file is served; Node finds it by itself. */
  readonly wasmUrl?: string;
  /** Cores to use where the machine doesn't say (Node 20). */
  readonly cores?: number;
}

/** Loads the exact kernel. Its messages go nowhere: its STEP writer would print into a command line's JSON. */
export async function loadKernel({ threads, wasmUrl, cores = 2 }: KernelPlace): Promise<Kernel> {
  const { default: init } = threads
    ? await import('replicad-opencascadejs/multi')
    : await import('replicad-opencascadejs');
  // the threads ask a browser's name for the cores there are; Node 20 has none
  if (threads) globalThis.navigator ??= { hardwareConcurrency: cores } as Navigator;
  const silent = { print: () => {}, printErr: () => {} };
  const oc: OpenCascadeInstance = await init(wasmUrl ? { ...silent, locateFile: () => wasmUrl } : silent);
  return { oc, threads };
}
