import { type Box, corners } from '../paper/box.ts';
import { clipped } from '../paper/clipped.ts';
import { path, SMALL, type TextInk, words } from '../paper/inks.ts';
import type { Ink, Typeface } from '../sheet.ts';
import { textBox } from '../textBox.ts';
import type { Art } from './art.ts';

/** How far neighbouring parts overlap, mm, and the size of the marks by which they are joined. */
const OVERLAP = 20;
const MARK = 3;

/** A part of a template that fits on a sheet. */
export interface Tile {
  readonly inks: readonly Ink[];
  readonly box: Box;
  /** `1`, `2` … from left to right, then from top to bottom; undefined for a template that is whole. */
  readonly name: string | undefined;
}

/** A template cut into parts of at most this size, mm. Parts overlap; each seam has marks that lie on each other. */
export function tiled(
  { inks, box }: Pick<Art, 'inks' | 'box'>,
  size: { readonly width: number; readonly height: number },
  typeface: Typeface,
): readonly Tile[] {
  const xs = windows(box.left, box.right, size.width);
  const ys = [...windows(box.bottom, box.top, size.height)].reverse();
  if (xs.length === 1 && ys.length === 1) return [{ inks, box, name: undefined }];
  const boxes = ys.flatMap(([bottom, top]) => xs.map(([left, right]): Box => ({ left, right, bottom, top })));
  const texts = inks.filter((ink): ink is TextInk => ink.kind === 'text');
  const homes = texts.map((text) => ({ text, home: homeOf(text, boxes, typeface) }));
  const marks = [...seams(xs).flatMap((x) => upright(x, box)), ...seams(ys).flatMap((y) => level(y, box))];
  return boxes.map((window, i) => ({
    box: window,
    name: String(i + 1),
    inks: [
      ...clipped(inks, window),
      ...clipped(marks, window),
      ...homes.flatMap(({ text, home }) => (home === i ? [movedInto(text, window, typeface)] : [])),
      words(`part ${i + 1} of ${boxes.length}`, [window.left + OVERLAP / 2 + 4, window.bottom + 1], {
        height: SMALL,
        layer: 'marks',
      }),
    ],
  }));
}

/** Stretches of at most a length that cover from one end to the other, as evenly as they can, and overlap. */
function windows(from: number, to: number, most: number): readonly (readonly [number, number])[] {
  if (to - from <= most) return [[from, to]];
  const count = Math.ceil((to - from - OVERLAP) / (most - OVERLAP));
  const step = (to - from - OVERLAP) / count;
  return Array.from({ length: count }, (_, i) => [from + i * step, from + (i + 1) * step + OVERLAP]);
}

/** Middles of the overlaps. */
function seams(stretches: readonly (readonly [number, number])[]): readonly number[] {
  const sorted = [...stretches].sort((a, b) => a[0] - b[0]);
  return sorted.slice(1).map(([from], i) => (from + (sorted[i] as readonly [number, number])[1]) / 2);
}

function upright(x: number, box: Box): readonly Ink[] {
  const line = path('marks', 'centre', [
    [x, box.bottom],
    [x, box.top],
  ]);
  return [line, ...[0.25, 0.75].flatMap((share) => diamond(x, box.bottom + share * (box.top - box.bottom)))];
}

function level(y: number, box: Box): readonly Ink[] {
  const line = path('marks', 'centre', [
    [box.left, y],
    [box.right, y],
  ]);
  return [line, ...[0.25, 0.75].flatMap((share) => diamond(box.left + share * (box.right - box.left), y))];
}

function diamond(x: number, y: number): readonly Ink[] {
  return [
    path(
      'marks',
      'detail',
      [
        [x - MARK, y],
        [x, y - MARK],
        [x + MARK, y],
        [x, y + MARK],
      ],
      true,
    ),
  ];
}

/** The part that a text goes to: the first that holds all of it, or else the one whose middle is nearest. */
function homeOf(text: TextInk, boxes: readonly Box[], typeface: Typeface): number {
  const points = corners(textBox(text, typeface));
  const whole = boxes.findIndex((b) =>
    points.every(([x, y]) => x >= b.left && x <= b.right && y >= b.bottom && y <= b.top),
  );
  if (whole >= 0) return whole;
  const [cx, cy] = textBox(text, typeface).centre;
  const far = boxes.map((b) => Math.hypot(cx - (b.left + b.right) / 2, cy - (b.bottom + b.top) / 2));
  return far.indexOf(Math.min(...far));
}

/** A text moved by as much as it stands out of its part. */
function movedInto(text: TextInk, box: Box, typeface: Typeface): TextInk {
  const points = corners(textBox(text, typeface));
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const by = (least: number, most: number, low: number, high: number) =>
    least < low ? low - least : most > high ? high - most : 0;
  return {
    ...text,
    at: [
      text.at[0] + by(Math.min(...xs), Math.max(...xs), box.left, box.right),
      text.at[1] + by(Math.min(...ys), Math.max(...ys), box.bottom, box.top),
    ],
  };
}
