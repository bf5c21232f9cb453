import type { Point } from '../../../models/curves/segment.ts';
import type { LinearPlace } from './dimension.ts';
import { type Drawn, GAP, PAST, plus, ROOM_FOR_ARROWS, TAIL } from './drawn.ts';
import { LABEL_HEIGHT, type Label, labelAt, labelWidth } from './label.ts';
import { onSheet, type View } from './view.ts';

/** Whether a dimension's text has room over its line, between the extension lines. */
export function fitsBetween(place: LinearPlace, text: string, scale: number): boolean {
  return spanOf(place, scale) >= Math.max(labelWidth(text) + 2, ROOM_FOR_ARROWS);
}

/** Length of the dimension line, px. */
export function spanOf({ from, to, along }: LinearPlace, scale: number): number {
  return Math.abs((to[0] - from[0]) * Math.cos(along) + (to[1] - from[1]) * Math.sin(along)) * scale;
}

/** How much a slanting dimension line takes across its lane, px. */
export function slantOf(place: LinearPlace, scale: number): number {
  const across = place.side === 'above' || place.side === 'below' ? Math.sin : Math.cos;
  return Math.abs(across(place.along)) * spanOf(place, scale);
}

/**
 * A linear dimension on the sheet: extension lines square to the measured direction, the dimension line between them
 * with its nearer end on `line` (px: y for a side above or below, x for left or right), text above it as ISO 129 has
 * it, or beside it where it has no room.
 */
export function drawLinear(place: LinearPlace, text: string, view: View, line: number): Drawn {
  const m: Point = [Math.cos(place.along), -Math.sin(place.along)];
  const axis = place.side === 'above' || place.side === 'below' ? 1 : 0;
  const outward = place.side === 'above' || place.side === 'left' ? -1 : 1;
  const flip = Math.sign(axis === 0 ? -m[1] : m[0]) * outward || 1;
  const n: Point = [-m[1] * flip, m[0] * flip];
  const points = [onSheet(view, place.from), onSheet(view, place.to)] as const;
  const alongOf = (p: Point): number => m[0] * p[0] + m[1] * p[1];
  const acrossOf = (p: Point): number => n[0] * p[0] + n[1] * p[1];
  const level = Math.max(...points.map((p) => (line - m[axis] * alongOf(p)) / n[axis]));
  const [a, b] = points.map((p): Point => plus(p, n, level - acrossOf(p))) as [Point, Point];
  const way: Point = alongOf(a) <= alongOf(b) ? m : [-m[0], -m[1]];
  const span = spanOf(place, view.scale);
  const outside = span < ROOM_FOR_ARROWS;
  const begin = GAP + (place.clear ?? 0) * view.scale;
  const extensions = points
    .filter((p) => level - acrossOf(p) > begin + PAST)
    .map((p) => [plus(p, n, begin), plus(p, n, level - acrossOf(p) + PAST)] as const);
  const fits = fitsBetween(place, text, view.scale);
  // beyond its end, a level dimension's text stands over the line carried on under it
  const carried = !fits && axis === 1 ? labelWidth(text) + TAIL : outside ? TAIL : 0;
  return {
    lines: [...extensions, [plus(a, way, outside ? -TAIL : 0), plus(b, way, carried)]],
    bow: undefined,
    arrows: [
      { tip: a, way: outside ? way : reverse(way) },
      { tip: b, way: outside ? reverse(way) : way },
    ],
    label: fits
      ? over(text, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], m)
      : axis === 1
        ? over(text, plus(b, way, TAIL + labelWidth(text) / 2), m)
        : labelAt(text, [(a[0] + b[0]) / 2 + outward * (labelWidth(text) / 2 + 4), (a[1] + b[1]) / 2], 0),
  };
}

const reverse = ([x, y]: Point): Point => [-x, -y];

/** A label above a dimension line, read from the foot of the sheet or, on an upright line, from its right. */
function over(text: string, at: Point, m: Point): Label {
  let turn = (Math.atan2(m[1], m[0]) * 180) / Math.PI;
  if (turn > 60) turn -= 180;
  if (turn <= -120) turn += 180;
  const up: Point = [Math.sin((turn * Math.PI) / 180), -Math.cos((turn * Math.PI) / 180)];
  return labelAt(text, plus(at, up, LABEL_HEIGHT / 2 + 1), turn);
}
