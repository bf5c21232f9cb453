import type { Rim } from '../curves/rim/rim.ts';
import { bandFace } from '../kernel/faces.ts';
import type { Face, Kernel } from '../kernel/kernel.ts';
import type { Scope } from '../kernel/scope.ts';
import type { Stretches } from './rimStretches.ts';

/** The faces of a round-over or chamfer, one a stretch. */
export function bandFaces(
  kernel: Kernel,
  scope: Scope,
  rim: Rim,
  stretches: Stretches,
  kind: 'round' | 'chamfer',
): readonly Face[] {
  return Array.from({ length: stretches.count }, (_, i) => {
    const [from, to] = [stretches.start(i), stretches.start(i + 1)];
    const band = (t: number) => rim.across(from + t * (to - from));
    return bandFace(kernel, scope, band, kind === 'round' ? 'arc' : 'straight');
  });
}
