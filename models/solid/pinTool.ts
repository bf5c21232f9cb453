import type { Holes, Pin } from '../curves/curves.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import type { Scope } from '../kernel/scope.ts';
import { closedPath, face, revolve } from '../kernel/shapes.ts';

/** Where the seam of the turned faces lies: toward the tail, clear of the channel, and on no plane of symmetry. */
const SEAM = -1.9;

/** What drill, countersink and (reamed) reamer take out at one pin. */
export function pinTool(kernel: Kernel, scope: Scope, pin: Pin, holes: Holes): Shape {
  const [x, y] = pin.at;
  const half = face(kernel, scope, closedPath(pin.outline[holes]), ([r, z]) => [
    x + r * Math.cos(SEAM),
    y + r * Math.sin(SEAM),
    z,
  ]);
  return revolve(kernel, scope, half, pin.at);
}
