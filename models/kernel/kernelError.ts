import type { Kernel } from './kernel.ts';

/** The solid kernel, or the gate on what it made, refused. The design may still be good: say so, show nothing of it. */
export class KernelError extends Error {
  override readonly name = 'KernelError';
  constructor(
    /** What was being made, in the bench's words. */
    readonly step: string,
    readonly reason: string,
    /** What the kernel threw: a trap, unlike an exception, leaves the kernel unusable. */
    cause?: unknown,
  ) {
    super(`${step}: ${reason}`, { cause });
  }
}

/** Runs one step of a build; whatever the kernel throws comes out as a `KernelError` that names the step. */
export function step<T>(kernel: Kernel, name: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof KernelError) throw error;
    throw new KernelError(name, reasonOf(kernel, error), error);
  }
}

function reasonOf(kernel: Kernel, error: unknown): string {
  // the kernel's own exceptions are opaque objects that only it can read
  if (error instanceof WebAssembly.Exception) return kernel.oc.getExceptionMessage(error).join(': ');
  return error instanceof Error ? error.message : String(error);
}
