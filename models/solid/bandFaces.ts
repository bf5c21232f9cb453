import type { Rim } from '../curves/rim/rim.ts';
import { bandFace } from '../kernel/faces.ts';
import type { Face, Kernel } from '../kernel/kernel.ts';
import type { Scope } from '../kernel/scope.ts';
import type { Stretches } from './rimStretches.ts';

/** The faces of a round-over or chamfer, one a stretch; none where top and wall meet in a line. */
export function bandFaces(kernel: Kernel, scope: Scope, rim: Rim, stretches: Stretches): readonly Face[] {
  const { section } = rim;
  if (section === 'point') return [];
  return Array.from({ length: stretches.count }, (_, i) => {
    const [from, to] = [stretches.start(i), stretches.start(i + 1)];
    return bandFace(kernel, scope, (t) => rim.across(from + t * (to - from)), section);
  });
}
