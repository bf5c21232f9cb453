import type { Point } from '../../../models/curves/segment.ts';

/** A box on the sheet, px, its sides level and upright. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A dimension's text on the sheet: where its middle is, how large it is before it is turned, and how it is turned. */
export interface Label {
  readonly text: string;
  readonly middle: Point;
  readonly width: number;
  readonly height: number;
  /** Degrees clockwise, as CSS turns. */
  readonly turn: number;
  /** What it covers, turned. */
  readonly box: Box;
}

/** Fixed-width faces are 0.60 to 0.61 of their size wide; the drawing's text is 12 px (drawing.css). */
const CHARACTER = 0.61 * 12;
const PAD = 3;
/** Height of a label, px. */
export const LABEL_HEIGHT = 16;

/** Width of a label, px. */
export function labelWidth(text: string): number {
  return [...text].length * CHARACTER + 2 * PAD;
}

/** A label round a middle, turned by degrees. */
export function labelAt(text: string, middle: Point, turn: number): Label {
  const [width, height] = [labelWidth(text), LABEL_HEIGHT];
  const [c, s] = [Math.abs(Math.cos((turn * Math.PI) / 180)), Math.abs(Math.sin((turn * Math.PI) / 180))];
  const [w, h] = [(width * c + height * s) / 2, (width * s + height * c) / 2];
  const [x, y] = middle;
  return {
    text,
    middle,
    width,
    height,
    turn,
    box: { left: x - w, top: y - h, right: x + w, bottom: y + h },
  };
}

/** Whether two boxes have more than their sides in common. */
export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Whether a stretch runs through a box (clipping by its sides, Liang and Barsky 1984). */
export function runsThrough(box: Box, [x0, y0]: Point, [x1, y1]: Point): boolean {
  let [enter, leave] = [0, 1];
  for (const [way, room] of [
    [x0 - x1, x0 - box.left],
    [x1 - x0, box.right - x0],
    [y0 - y1, y0 - box.top],
    [y1 - y0, box.bottom - y0],
  ] as const) {
    if (way === 0) {
      if (room <= 0) return false;
    } else if (way < 0) enter = Math.max(enter, room / way);
    else leave = Math.min(leave, room / way);
  }
  return enter < leave;
}
