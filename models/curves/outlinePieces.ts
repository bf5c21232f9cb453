import type { DesignText } from '../../src/design/design.ts';
import { mirrorImage } from './chain.ts';
import { type Chain, nearestOn, type Point, pointAt, reversed, type Segment } from './segment.ts';

/** One long edge of the outline, its right half walked from the centre line to the wing. */
export interface LongEdge {
  /** The first spans the centre line. */
  readonly pieces: Chain;
  readonly form: 'straight' | 'sweep' | 'bow' | 'taper';
  /** y on the centre line, mm. */
  readonly middle: number;
}

/** The outline taken apart into what the bench calls its pieces; all of them lie on the right half (x > 0). */
export interface OutlinePieces {
  readonly front: LongEdge;
  readonly back: LongEdge;
  readonly tip: Chain;
  readonly frontCorner: Segment | undefined;
  readonly backCorner: Segment | undefined;
}

/**
 * Takes an outline apart. It is symmetric, counter-clockwise and begins with the piece that spans the middle of the
 * back edge, so the one that spans the front's lies half way round. The choices in `text` say what the pieces are.
 */
export function outlinePieces(outline: Chain, text: DesignText): OutlinePieces {
  const ahead = outline.length / 2;
  const half = outline.slice(0, ahead + 1);
  const round = text.footprint.tip === 'round';
  const [first, last] = round ? farthestPieces(half) : farthestMiddle(half);
  const corner = round ? 0 : 1;
  const f = text.footprint;
  const edge = (pieces: Chain, goes: unknown, form: unknown): LongEdge => ({
    pieces,
    form: goes === 'straight' ? 'straight' : (form as LongEdge['form']),
    middle: pointAt(pieces[0] as Segment, 0.5)[1],
  });
  return {
    back: edge(half.slice(0, Math.max(1, first - corner)), f.backEdge, f.backForm),
    front: edge(
      half
        .slice(Math.min(ahead, last + 1 + corner))
        .map(reversed)
        .reverse(),
      f.frontEdge,
      f.frontForm,
    ),
    tip: half.slice(first, last + 1),
    backCorner: round ? undefined : half[first - 1],
    frontCorner: round ? undefined : half[last + 1],
  };
}

/** Half the bridge's length, mm: how far its outline reaches. */
export function halfLengthOf(outline: Chain): number {
  return Math.max(...outline.map(rightmost));
}

function rightmost(s: Segment): number {
  const ends = Math.max(s.from[0], s.to[0]);
  if (s.kind === 'line') return ends;
  const far: Point = [s.centre[0] + s.radius, s.centre[1]];
  return nearestOn(s, far).distance < 1e-9 ? far[0] : ends;
}

/** The one or two arcs of a half-round tip: those that reach the bridge's very end. */
function farthestPieces(half: Chain): readonly [number, number] {
  const length = halfLengthOf(half);
  const reaches = half.map((s) => rightmost(s) > length - 1e-9);
  return [reaches.indexOf(true), reaches.lastIndexOf(true)];
}

/** The end of a wing between its corners, which touch the bridge's end as well, but not with their middles. */
function farthestMiddle(half: Chain): readonly [number, number] {
  const middles = half.map((s) => pointAt(s, 0.5)[0]);
  const t = middles.indexOf(Math.max(...middles));
  return [t, t];
}

/** Where a double sweep begins and ends, or a straight taper begins: x of the right half, mm. */
export interface Turns {
  readonly fullDepth: number;
  readonly sweepEnd: number | undefined;
}

/** Undefined for an edge that is straight or one bow, and for pieces that are not what the choices say. */
export function turnsOf(edge: LongEdge): Turns | undefined {
  const arcs = edge.pieces.filter((s) => s.kind === 'arc');
  const [first, second] = arcs;
  const last = edge.pieces[edge.pieces.length - 1];
  if (edge.form === 'sweep' && first && second) {
    // each arc of a sweep is level where it meets its straight, so its centre stands over that place
    return { fullDepth: first.centre[0], sweepEnd: second.centre[0] };
  }
  if (edge.form === 'taper' && first && last?.kind === 'line') {
    const rise = last.to[1] - last.from[1];
    if (rise === 0) return undefined;
    // the sharp corner that the knee takes off
    const x = last.from[0] + ((edge.middle - last.from[1]) * (last.to[0] - last.from[0])) / rise;
    return { fullDepth: x, sweepEnd: undefined };
  }
  return undefined;
}

/** Where a long edge, carried on past its corner, would end the bridge at x = half, mm. */
export function wingEnd(edge: LongEdge, half: number): Point {
  const last = edge.pieces[edge.pieces.length - 1] as Segment;
  const [x, y] = last.to;
  if (last.kind === 'line') {
    const run = last.to[0] - last.from[0];
    return [half, run === 0 ? y : y + ((half - x) * (last.to[1] - last.from[1])) / run];
  }
  const aside = last.radius ** 2 - (half - last.centre[0]) ** 2;
  if (aside < 0) return [half, y];
  return [half, last.centre[1] + Math.sign(y - last.centre[1]) * Math.sqrt(aside)];
}

/** A piece and its mirror image in x = 0; one that spans the centre line is its own. */
export function bothSides(piece: Segment): readonly Chain[] {
  return piece.from[0] * piece.to[0] < 0 ? [[piece]] : [[piece], mirrorImage([piece])];
}
