import type { Profile } from './curves.ts';
import { type Chain, directionAt, type Point, type Segment } from './segment.ts';

/**
 * The profile moved into the wood by `depth` mm along its normal: crown and shoulder arcs shrink, blend and hollow
 * grow, straights shift. It is what lies under a round-over or chamfer of that depth, and exact while `depth` is less
 * than the shoulder's radius.
 */
export function insetProfile(profile: Profile, depth: number): Chain {
  return profile.chain.map((s) => {
    const shift = (p: Point, t: number): Point => {
      const [dx, dz] = directionAt(s, t);
      return [p[0] + depth * dz, p[1] - depth * dx];
    };
    const moved = { from: shift(s.from, 0), to: shift(s.to, 1) };
    return s.kind === 'line' ? { ...s, ...moved } : { ...s, ...moved, radius: s.radius + s.turn * depth };
  });
}

/** Height of a left-to-right chain over x, mm. Beyond its ends it is carried on level. */
export function heightOn(chain: Chain, x: number): number {
  const first = chain[0] as Segment;
  const last = chain[chain.length - 1] as Segment;
  if (x <= first.from[0]) return first.from[1];
  for (const s of chain) if (x <= s.to[0]) return heightOnSegment(s, x);
  return last.to[1];
}

function heightOnSegment(s: Segment, x: number): number {
  if (s.kind === 'line') {
    return s.from[1] + ((x - s.from[0]) / (s.to[0] - s.from[0])) * (s.to[1] - s.from[1]);
  }
  const half = Math.sqrt(Math.max(0, s.radius ** 2 - (x - s.centre[0]) ** 2));
  // walking toward +x, a clockwise arc is a hill and a counter-clockwise one a hollow
  return s.turn === -1 ? s.centre[1] + half : s.centre[1] - half;
}

/** Height of the uncut, unedged top over x, mm. */
export function topHeight(profile: Profile, x: number): number {
  return heightOn(profile.chain, x);
}
