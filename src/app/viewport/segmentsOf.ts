import type { Spot } from '../../report/findings/finding.ts';

/** Lines of points as separate segments, xyz pairs. */
export function segmentsOf(lines: readonly (readonly Spot[])[]): Float32Array {
  return new Float32Array(
    lines.flatMap((line) => line.slice(1).flatMap((to, i) => [...(line[i] as Spot), ...to])),
  );
}
