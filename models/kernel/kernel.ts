import type { OpenCascadeInstance, TopoDS_Face, TopoDS_Shape } from 'replicad-opencascadejs';

/** A shape of the kernel's, by its handle: freed by whoever owns it. */
export type Shape = TopoDS_Shape;
/** A face of the kernel's, by its handle. */
export type Face = TopoDS_Face;

/** The exact solid kernel, loaded. Everything else in this room takes it as its first argument. */
export interface Kernel {
  readonly oc: OpenCascadeInstance;
  /** Whether it cuts with several threads. */
  readonly threads: boolean;
}

/** Bytes of memory the kernel holds; it only grows. */
export function heapBytes(kernel: Kernel): number {
  return kernel.oc.wasmMemory.buffer.byteLength;
}
