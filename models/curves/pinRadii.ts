import type { Pin } from './curves.ts';

/** A pin hole's radius as drilled, and reamed and bevelled where it meets the top, mm. */
export function pinRadii(pin: Pin): { readonly drill: number; readonly surface: number } {
  const wall = pin.outline.reamed.filter(([r]) => r > 0);
  const drill = Math.min(...pin.outline.drilled.map(([r]) => r).filter((r) => r > 0));
  let surface = drill;
  wall.forEach(([r, z], i) => {
    const next = wall[i + 1];
    if (!next || z > pin.top || next[1] < pin.top) return;
    surface = r + ((pin.top - z) / (next[1] - z)) * (next[0] - r);
  });
  return { drill, surface };
}
