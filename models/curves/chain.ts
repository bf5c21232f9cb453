import {
  type Chain,
  lengthOf,
  mirrored,
  nearestOn,
  type Point,
  pointAt,
  reversed,
  type Segment,
  sweepOf,
} from './segment.ts';

/** Area enclosed by a closed chain by Green's theorem, exact for lines and arcs; positive when counter-clockwise. mm² */
export function enclosedArea(chain: Chain): number {
  let twice = 0;
  for (const s of chain) {
    twice += s.from[0] * s.to[1] - s.to[0] * s.from[1];
    if (s.kind === 'arc') {
      const a = sweepOf(s);
      twice += s.turn * s.radius * s.radius * (a - Math.sin(a));
    }
  }
  return twice / 2;
}

export function chainLength(chain: Chain): number {
  return chain.reduce((sum, s) => sum + lengthOf(s), 0);
}

/** The chain walked the other way. */
export function backwards(chain: Chain): Chain {
  return chain.map(reversed).reverse();
}

/** Mirror image in x = 0, walked so that a counter-clockwise chain stays counter-clockwise. */
export function mirrorImage(chain: Chain): Chain {
  return backwards(chain.map(mirrored));
}

/** Distance from a point to the nearest piece, mm, unsigned. */
export function distanceTo(chain: Chain, p: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const s of chain) least = Math.min(least, nearestOn(s, p).distance);
  return least;
}

/** Whether a point lies inside a closed chain: exact ray casting over lines and arcs, along +x. */
export function isInside(chain: Chain, p: Point): boolean {
  let inside = false;
  for (const s of chain) {
    for (const x of crossings(s, p[1])) if (x > p[0]) inside = !inside;
  }
  return inside;
}

/** x of each place where a segment crosses the level y, its upper end excluded so that joints count once. */
export function crossings(s: Segment, y: number): readonly number[] {
  const found: number[] = [];
  // each piece on which y only rises or only falls crosses a level once at most
  for (const [a, b] of monotone(s)) {
    const [ya, yb] = [a[1], b[1]];
    if (ya > y === yb > y) continue;
    if (s.kind === 'line') found.push(a[0] + ((y - ya) / (yb - ya)) * (b[0] - a[0]));
    else {
      const half = Math.sqrt(Math.max(0, s.radius * s.radius - (y - s.centre[1]) ** 2));
      found.push(s.centre[0] + (a[0] + b[0] >= 2 * s.centre[0] ? half : -half));
    }
  }
  return found;
}

/**
 * Ends of the pieces of a segment on which y is monotone. Its own ends are taken as they are: neighbours share them to
 * the last figure, so that a level through a joint is counted once.
 */
function monotone(s: Segment): readonly (readonly [Point, Point])[] {
  if (s.kind === 'line') return [[s.from, s.to]];
  const sweep = sweepOf(s);
  const start = Math.atan2(s.from[1] - s.centre[1], s.from[0] - s.centre[0]);
  const turns: { readonly along: number; readonly at: Point }[] = [];
  for (const up of [1, -1]) {
    let along = (s.turn * ((up * Math.PI) / 2 - start)) % (2 * Math.PI);
    if (along < 0) along += 2 * Math.PI;
    const at: Point = [s.centre[0], s.centre[1] + up * s.radius];
    if (along > 1e-12 && along < sweep - 1e-12) turns.push({ along, at });
  }
  turns.sort((a, b) => a.along - b.along);
  const stops = [s.from, ...turns.map(({ at }) => at), s.to];
  return stops.slice(1).map((to, i) => [stops[i] as Point, to] as const);
}

/** A closed chain as a polygon whose sides stray at most `deviation` mm from it. */
export function polygon(chain: Chain, deviation: number): readonly Point[] {
  const out: Point[] = [];
  for (const s of chain) {
    const n = s.kind === 'line' ? 1 : arcPieces(s.radius, sweepOf(s), deviation);
    for (let i = 0; i < n; i++) out.push(pointAt(s, i / n));
  }
  return out;
}

/** How many chords an arc needs to stay within `deviation` mm of it. */
export function arcPieces(radius: number, sweep: number, deviation: number): number {
  const step = 2 * Math.acos(1 - Math.min(1, deviation / radius));
  return Math.max(1, Math.ceil(sweep / step - 1e-9));
}
