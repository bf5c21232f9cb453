import type { Holes, Pin } from '../curves/curves.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import type { Scope } from '../kernel/scope.ts';
import { closedPath, face, revolve } from '../kernel/shapes.ts';

/** What drill, countersink and (reamed) reamer take out at one pin. */
export function pinTool(kernel: Kernel, scope: Scope, pin: Pin, holes: Holes): Shape {
  const [x, y] = pin.at;
  // the seam of the turned faces lies toward the tail, where nothing else is cut
  const half = face(kernel, scope, closedPath(pin.outline[holes]), ([r, z]) => [x, y - r, z]);
  return revolve(kernel, scope, half, pin.at);
}
