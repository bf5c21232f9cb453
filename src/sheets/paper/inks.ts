import { type Chain, line, type Point } from '../../../models/curves/segment.ts';
import type { Ink, Layer, Pen } from '../sheet.ts';

/** Height of capitals, mm: of figures and notes, of headings, and of the small words in the title strip. */
export const TEXT = 2.5;
export const HEADING = 3.5;
export const SMALL = 1.8;

/** Length and half the width of an arrowhead, mm. */
export const ARROW = 2.5;
const ARROW_HALF = 0.4;

export function stroke(layer: Layer, pen: Pen, chain: Chain, closed = false): Ink {
  return { kind: 'line', layer, pen, chain, closed };
}

/** Straights from point to point. */
export function path(layer: Layer, pen: Pen, points: readonly Point[], closed = false): Ink {
  return stroke(layer, pen, straights(points, closed), closed);
}

export function straights(points: readonly Point[], closed = false): Chain {
  const ends = closed ? [...points.slice(1), points[0] as Point] : points.slice(1);
  return ends.map((to, i) => line(points[i] as Point, to));
}

export function ring(layer: Layer, pen: Pen, centre: Point, radius: number): Ink {
  return { kind: 'circle', layer, pen, centre, radius };
}

export type TextInk = Extract<Ink, { readonly kind: 'text' }>;

interface Style {
  readonly height?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly angle?: number;
  readonly bold?: boolean;
  readonly layer?: Layer;
}

export function words(text: string, at: Point, style: Style = {}): TextInk {
  const { height = TEXT, anchor = 'start', angle = 0, bold, layer = 'text' } = style;
  return { kind: 'text', layer, text, at, anchor, height, angle, ...(bold ? { bold } : {}) };
}

/** An arrowhead whose point lies at `tip`, flying along the unit vector `way`. */
export function arrowhead(tip: Point, [dx, dy]: Point, layer: Layer = 'dimensions', length = ARROW): Ink {
  const half = (ARROW_HALF * length) / ARROW;
  const back: Point = [tip[0] - length * dx, tip[1] - length * dy];
  const corners: readonly Point[] = [
    tip,
    [back[0] - half * dy, back[1] + half * dx],
    [back[0] + half * dy, back[1] - half * dx],
  ];
  return { kind: 'line', layer, pen: 'detail', chain: straights(corners, true), closed: true, fill: 'ink' };
}

/** Two strokes that cross at a place. */
export function cross(layer: Layer, pen: Pen, [x, y]: Point, half: number): readonly Ink[] {
  return [
    path(layer, pen, [
      [x - half, y],
      [x + half, y],
    ]),
    path(layer, pen, [
      [x, y - half],
      [x, y + half],
    ]),
  ];
}
