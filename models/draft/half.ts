import { arcPieces } from '../curves/chain.ts';
import { type Chain, type Line, lengthOf, reversed, type Segment } from '../curves/segment.ts';

/** A place on a half of an outline: where it is, and the unit direction of travel there, never toward −x. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

interface Line2 {
  readonly kind: 'line';
  readonly start: number;
  readonly length: number;
  readonly from: Place;
}

interface Arc2 {
  readonly kind: 'arc';
  readonly start: number;
  readonly length: number;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly turn: 1 | -1;
  /** Angle at its start, radians. */
  readonly angle: number;
}

type Piece = Line2 | Arc2;

/** The back or the front of a closed outline, from the left tip to the right one, measured along its length, mm. */
export interface Half {
  /** On which side of the travel the inside lies: +1 left (the back), −1 right (the front). */
  readonly inside: 1 | -1;
  readonly pieces: readonly Piece[];
  readonly length: number;
}

/**
 * Splits a closed counter-clockwise outline, which every line along y crosses twice, where it reaches furthest to the
 * left and right. Straight tips belong to neither half.
 */
export function halvesOf(outline: Chain): { readonly back: Half; readonly front: Half } {
  const back: Segment[] = [];
  const front: Segment[] = [];
  for (const s of outline.flatMap(cutAtTips)) {
    const run = s.to[0] - s.from[0];
    if (run > LEVEL) back.push(s);
    if (run < -LEVEL) front.push(reversed(s));
  }
  return { back: half(back, 1), front: half(front, -1) };
}

/** A piece that goes less than this far along x belongs to a straight tip, mm. */
const LEVEL = 1e-9;

function half(segments: readonly Segment[], inside: 1 | -1): Half {
  const pieces: Piece[] = [];
  let start = 0;
  for (const s of segments.toSorted((a, b) => a.from[0] - b.from[0])) {
    const length = lengthOf(s);
    pieces.push(s.kind === 'line' ? linePiece(s, start, length) : arcPiece(s, start, length));
    start += length;
  }
  return { inside, pieces, length: start };
}

function linePiece(s: Line, start: number, length: number): Line2 {
  const [x, y] = s.from;
  return {
    kind: 'line',
    start,
    length,
    from: { x, y, dx: (s.to[0] - x) / length, dy: (s.to[1] - y) / length },
  };
}

function arcPiece(s: Segment & { kind: 'arc' }, start: number, length: number): Arc2 {
  const { radius, turn } = s;
  const [x, y] = s.centre;
  return { kind: 'arc', start, length, x, y, radius, turn, angle: Math.atan2(s.from[1] - y, s.from[0] - x) };
}

/** An arc that turns round a tip, cut where it reaches furthest. */
function cutAtTips(s: Segment): readonly Segment[] {
  if (s.kind === 'line') return [s];
  for (const side of [1, -1]) {
    const tip = [s.centre[0] + side * s.radius, s.centre[1]] as const;
    // counter-clockwise, whatever comes from below and ends above has gone round by the right
    const rises = s.turn * side;
    if (rises * (tip[1] - s.from[1]) > LEVEL && rises * (s.to[1] - tip[1]) > LEVEL) {
      return [
        { ...s, to: tip },
        { ...s, from: tip },
      ].flatMap(cutAtTips);
    }
  }
  return [s];
}

/** The place `s` mm along a half; before its start and after its end, the nearer of the two. */
export function placeOn(half: Half, s: number): Place {
  const along = Math.min(half.length, Math.max(0, s));
  const piece = half.pieces.findLast((p) => p.start <= along) as Piece;
  const t = along - piece.start;
  if (piece.kind === 'line') {
    const { x, y, dx, dy } = piece.from;
    return { x: x + t * dx, y: y + t * dy, dx, dy };
  }
  const { radius, turn } = piece;
  const angle = piece.angle + (turn * t) / radius;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  // a tip's own direction is square to x: no rounding error may turn it back
  return {
    x: piece.x + radius * cos,
    y: piece.y + radius * sin,
    dx: Math.max(0, -turn * sin),
    dy: turn * cos,
  };
}

/** Lengths along a half between which chords stay within the deviation that `chordDeviation` gives, ends included. */
export function chordsOf(half: Half, deviation: number): readonly number[] {
  const out: number[] = [];
  for (const p of half.pieces) {
    const n =
      p.kind === 'line' ? 1 : arcPieces(p.radius, p.length / p.radius, chordDeviation(p.radius, deviation));
    for (let i = 0; i < n; i++) out.push(p.start + (i * p.length) / n);
  }
  out.push(half.length);
  return out;
}

/** Lengths along a half at which it runs level: there it may reach its greatest or least y. */
export function levelsOf(half: Half): readonly number[] {
  return half.pieces.flatMap((p) => {
    if (p.kind === 'line') return [];
    // walking toward +x, an arc is level at its top when it turns clockwise, at its bottom when counter-clockwise
    const along = p.turn * ((-p.turn * Math.PI) / 2 - p.angle) * p.radius;
    const turn = 2 * Math.PI * p.radius;
    const s = ((along % turn) + turn) % turn;
    return s < p.length ? [p.start + s] : [];
  });
}

/** Radius, mm, up to which an arc is drawn with the whole deviation. */
const SMALL = 15;

/**
 * The deviation allowed to an arc's chords, mm. The wood lost between chord and arc grows with the arc's length, the
 * number of chords only with its root: for the least loss with a given number of chords over all arcs, the deviation
 * falls with the cube root of the radius (derived).
 */
export function chordDeviation(radius: number, deviation: number): number {
  return deviation * Math.min(1, Math.cbrt(SMALL / radius));
}
