import type { Profile } from '../curves.ts';
import { directionAt, type Segment } from '../segment.ts';

/** The uncut top and everything parallel to it inside the wood, over x alone. */
export interface Top {
  /** z of the profile moved into the wood by `depth` mm along its normal. */
  height(x: number, depth: number): number;
  /** dz/dx there. */
  slope(x: number, depth: number): number;
  /** x of the joints between the profile's pieces when moved in by `depth`, left to right. */
  joints(depth: number): readonly number[];
  /** The profile's own pieces, left to right. */
  readonly pieces: readonly Segment[];
}

interface Piece {
  /** Where the piece ends, and how far that goes sideways for each mm of depth. */
  readonly end: number;
  readonly lean: number;
  height(x: number, depth: number): number;
  slope(x: number, depth: number): number;
}

/**
 * The same heights as `heightOn(insetProfile(profile, depth), x)`, without drawing a chain for every depth: arcs keep
 * their centres and change their radius, straights shift, and each joint moves along its own normal.
 */
export function topOf(profile: Profile): Top {
  const pieces = profile.chain.map(piece);
  const start = profile.chain[0] as Segment;
  const [startX, startZ] = start.from;
  const [startDx, startDz] = directionAt(start, 0);
  const last = pieces[pieces.length - 1] as Piece;

  const pick = (x: number, depth: number): Piece | undefined => {
    for (const p of pieces) if (x <= p.end + depth * p.lean) return p;
    return undefined;
  };
  const before = (x: number, depth: number) => x <= startX + depth * startDz;
  return {
    pieces: profile.chain,
    height: (x, depth) => {
      if (before(x, depth)) return startZ - depth * startDx;
      const p = pick(x, depth);
      return p ? p.height(x, depth) : last.height(last.end + depth * last.lean, depth);
    },
    slope: (x, depth) => (before(x, depth) ? 0 : (pick(x, depth)?.slope(x, depth) ?? 0)),
    joints: (depth) => pieces.slice(0, -1).map((p) => p.end + depth * p.lean),
  };
}

function piece(s: Segment): Piece {
  const [, dzEnd] = directionAt(s, 1);
  const ends = { end: s.to[0], lean: dzEnd };
  if (s.kind === 'line') {
    const [dx, dz] = directionAt(s, 0);
    const rise = dz / dx;
    return {
      ...ends,
      height: (x, depth) => s.from[1] - depth * dx + (x - s.from[0] - depth * dz) * rise,
      slope: () => rise,
    };
  }
  const [cx, cz] = s.centre;
  const half = (x: number, depth: number) =>
    Math.sqrt(Math.max(0, (s.radius + s.turn * depth) ** 2 - (x - cx) ** 2));
  // walking toward +x, a clockwise arc is a hill and a counter-clockwise one a hollow
  return {
    ...ends,
    height: (x, depth) => cz - s.turn * half(x, depth),
    slope: (x, depth) => (s.turn * (x - cx)) / half(x, depth),
  };
}
