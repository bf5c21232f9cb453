import { type Arc, type Chain, lengthOf, type Point, pointAt, type Segment, sweepOf } from '../segment.ts';

/** A box in plan, mm. */
export interface PlanBox {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A place on the outline: point, unit direction of travel, and curvature (positive where the wood bulges), 1/mm. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
  readonly bend: number;
}

/** The outline's place nearest to a point. */
export interface Nearest {
  /** Its length along the outline, mm. */
  readonly s: number;
  readonly distance: number;
  /** Which piece it lies on. */
  readonly piece: number;
}

/** A closed outline, counter-clockwise, walked by its length: wood lies on the left. */
export interface Plan {
  readonly length: number;
  readonly box: PlanBox;
  /** Lengths at which the pieces begin, and the whole at the end. */
  readonly joints: readonly number[];
  readonly pieces: Chain;
  /** The place `s` mm along, from the first piece's start; goes round as often as you like. */
  at(s: number): Place;
  /** The nearest place; with a `limit`, only if it is nearer than that, mm. */
  nearest(x: number, y: number, limit?: number): Nearest | undefined;
  contains(x: number, y: number): boolean;
}

export function planOf(outline: Chain): Plan {
  const joints = [0];
  for (const s of outline) joints.push((joints[joints.length - 1] as number) + lengthOf(s));
  const length = joints[joints.length - 1] as number;
  const walks = outline.map(walk);
  const nears = outline.map(near);
  const bounds = boxOf(outline);
  const fences = outline.flatMap(fence);

  return {
    length,
    joints,
    pieces: outline,
    box: bounds,
    at: (s) => {
      const along = s - Math.floor(s / length) * length;
      let i = 0;
      while (i < walks.length - 1 && along > (joints[i + 1] as number)) i++;
      return (walks[i] as (a: number) => Place)(along - (joints[i] as number));
    },
    nearest: (x, y, limit = Number.POSITIVE_INFINITY) => {
      let best: Nearest | undefined;
      for (let i = 0; i < nears.length; i++) {
        const found = (nears[i] as Near)(x, y, best ? best.distance : limit);
        if (found && found.distance < (best ? best.distance : limit)) {
          best = { s: (joints[i] as number) + found.along, distance: found.distance, piece: i };
        }
      }
      return best;
    },
    contains: (x, y) => {
      if (x < bounds.x0 || x > bounds.x1 || y < bounds.y0 || y > bounds.y1) return false;
      let inside = false;
      for (const f of fences) if (f.from > y !== f.to > y && f.x(y) > x) inside = !inside;
      return inside;
    },
  };
}

/** Whether the piece that `near` lies on is straight along X, and goes on for `reach` mm to both sides. */
export function facesAlongY(plan: Plan, near: Nearest, reach: number): boolean {
  const piece = plan.pieces[near.piece];
  return (
    piece?.kind === 'line' &&
    piece.from[1] === piece.to[1] &&
    near.s - reach >= (plan.joints[near.piece] as number) &&
    near.s + reach <= (plan.joints[near.piece + 1] as number)
  );
}

const startAngle = (a: Arc) => Math.atan2(a.from[1] - a.centre[1], a.from[0] - a.centre[0]);

function walk(s: Segment): (along: number) => Place {
  if (s.kind === 'line') {
    const l = lengthOf(s);
    const [dx, dy] = [(s.to[0] - s.from[0]) / l, (s.to[1] - s.from[1]) / l];
    return (along) => ({ x: s.from[0] + along * dx, y: s.from[1] + along * dy, dx, dy, bend: 0 });
  }
  const start = startAngle(s);
  return (along) => {
    const a = start + (s.turn * along) / s.radius;
    const [c, n] = [Math.cos(a), Math.sin(a)];
    return {
      x: s.centre[0] + s.radius * c,
      y: s.centre[1] + s.radius * n,
      dx: -s.turn * n,
      dy: s.turn * c,
      bend: s.turn / s.radius,
    };
  };
}

type Near = (x: number, y: number, limit: number) => { along: number; distance: number } | undefined;

/** Nearest place on one piece, unless it is surely no nearer than `limit`. */
function near(s: Segment): Near {
  const l = lengthOf(s);
  if (s.kind === 'line') {
    const [dx, dy] = [(s.to[0] - s.from[0]) / l, (s.to[1] - s.from[1]) / l];
    return (x, y, limit) => {
      const [rx, ry] = [x - s.from[0], y - s.from[1]];
      const aside = Math.abs(rx * dy - ry * dx);
      if (aside >= limit) return undefined;
      const foot = rx * dx + ry * dy;
      const along = Math.max(0, Math.min(foot, l));
      return { along, distance: Math.hypot(aside, foot - along) };
    };
  }
  const start = startAngle(s);
  const sweep = sweepOf(s);
  return (x, y, limit) => {
    const [rx, ry] = [x - s.centre[0], y - s.centre[1]];
    const off = Math.abs(Math.hypot(rx, ry) - s.radius);
    if (off >= limit) return undefined;
    const raw = s.turn * (Math.atan2(ry, rx) - start);
    const turned = raw - Math.floor(raw / (2 * Math.PI)) * 2 * Math.PI;
    if (turned <= sweep) return { along: turned * s.radius, distance: off };
    const end = turned - sweep < 2 * Math.PI - turned ? s.to : s.from;
    return { along: end === s.to ? l : 0, distance: Math.hypot(x - end[0], y - end[1]) };
  };
}

interface Fence {
  /** y where it begins and where it ends. */
  readonly from: number;
  readonly to: number;
  /** Where it crosses a level, half open so that joints count once. */
  x(y: number): number;
}

/** The parts of a piece on which y only rises or only falls. */
function fence(s: Segment): readonly Fence[] {
  if (s.kind === 'line') {
    const slope = (s.to[0] - s.from[0]) / (s.to[1] - s.from[1]);
    return [{ from: s.from[1], to: s.to[1], x: (y) => s.from[0] + (y - s.from[1]) * slope }];
  }
  // the ends as drawn, not as computed: a level that one piece ends at is the level the next begins at
  const turns = quarterTurns(s, [Math.PI / 2, -Math.PI / 2]).map((t) => pointAt(s, t));
  return [...turns, s.to].map((b, i) => {
    const a = i === 0 ? s.from : (turns[i - 1] as Point);
    const side = a[0] + b[0] >= 2 * s.centre[0] ? 1 : -1;
    return {
      from: a[1],
      to: b[1],
      x: (y) => s.centre[0] + side * Math.sqrt(Math.max(0, s.radius ** 2 - (y - s.centre[1]) ** 2)),
    };
  });
}

/** Shares along an arc at which it passes given angles, in order. */
export function quarterTurns(s: Arc, angles: readonly number[]): readonly number[] {
  const [start, sweep] = [startAngle(s), sweepOf(s)];
  return angles
    .map((angle) => {
      const raw = s.turn * (angle - start);
      return (raw - Math.floor(raw / (2 * Math.PI)) * 2 * Math.PI) / sweep;
    })
    .filter((t) => t > 1e-12 && t < 1 - 1e-12)
    .sort((a, b) => a - b);
}

/** The points of a chain that can be its outermost: joints, and where an arc faces along an axis or from the origin. */
export function outermost(chain: Chain): readonly (readonly [number, number])[] {
  return chain.flatMap((s) => {
    if (s.kind === 'line') return [s.from];
    const angles = [0, Math.PI / 2, Math.PI, -Math.PI / 2, Math.atan2(s.centre[1], s.centre[0])];
    return [s.from, ...quarterTurns(s, angles).map((t) => pointAt(s, t))];
  });
}

function boxOf(chain: Chain): PlanBox {
  const points = outermost(chain);
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}
