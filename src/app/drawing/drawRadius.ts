import type { Point } from '../../../models/curves/segment.ts';
import type { RadiusPlace } from './dimension.ts';
import { type Drawn, plus } from './drawn.ts';
import { LABEL_HEIGHT, labelAt, labelWidth } from './label.ts';
import { onSheet, type View } from './view.ts';

/** A radius on the sheet; a leader that belongs to a lane lands on `line` (px, y). */
export function drawRadius(place: RadiusPlace, text: string, view: View, line: number): Drawn {
  const tip = onSheet(view, place.at);
  const way: Point = [place.way[0], -place.way[1]];
  const length = 'px' in place.leg ? place.leg.px : Math.max(0, (line - tip[1]) / way[1]);
  const elbow = plus(tip, way, length);
  const width = labelWidth(text);
  const landing: Point = [elbow[0] + place.hand * width, elbow[1]];
  return {
    lines: [
      [tip, elbow],
      [elbow, landing],
    ],
    bow: undefined,
    arrows: [{ tip, way: [-way[0], -way[1]] }],
    label: labelAt(text, [(elbow[0] + landing[0]) / 2, elbow[1] - LABEL_HEIGHT / 2 - 1], 0),
  };
}
