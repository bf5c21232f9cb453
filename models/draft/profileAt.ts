import type { Chain, Segment } from '../curves/segment.ts';

/** A point of the long profile: its height, mm, and the unit normal there, out of the wood, in (x, z). */
export interface ProfilePoint {
  readonly z: number;
  readonly nx: number;
  readonly nz: number;
}

/** The profile over x. `chain` runs toward +x and is carried on past its ends. */
export function profileAt(chain: Chain, x: number): ProfilePoint {
  const s = chain.find((one) => x <= one.to[0]) ?? (chain[chain.length - 1] as Segment);
  if (s.kind === 'line') {
    const [dx, dz] = [s.to[0] - s.from[0], s.to[1] - s.from[1]];
    const length = Math.hypot(dx, dz);
    return { z: s.from[1] + ((x - s.from[0]) / dx) * dz, nx: -dz / length, nz: dx / length };
  }
  const off = x - s.centre[0];
  const half = Math.sqrt(Math.max(0, s.radius * s.radius - off * off));
  // walking toward +x, a clockwise arc is a hill and a counter-clockwise one a hollow
  return { z: s.centre[1] - s.turn * half, nx: (-s.turn * off) / s.radius, nz: half / s.radius };
}
