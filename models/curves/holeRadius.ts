import type { Pin } from './curves.ts';

/** Radius of a hole at a height z, read off half its outline, mm: beyond its ends that of the end. */
export function holeRadius(outline: Pin['outline']['drilled'], z: number): number {
  const wall = outline.filter(([r]) => r > 0);
  const [foot, head] = [wall[0], wall[wall.length - 1]];
  if (!foot || !head) return 0;
  if (z <= foot[1]) return foot[0];
  const i = wall.findIndex((corner) => corner[1] >= z);
  const [a, b] = [wall[i - 1], wall[i]];
  return a && b ? a[0] + ((z - a[1]) / (b[1] - a[1])) * (b[0] - a[0]) : head[0];
}
