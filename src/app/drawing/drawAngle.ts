import type { Point } from '../../../models/curves/segment.ts';
import type { AnglePlace } from './dimension.ts';
import { type Drawn, PAST, plus, ROOM_FOR_ARROWS, TAIL } from './drawn.ts';
import { labelAt, labelWidth } from './label.ts';
import { say } from './pathOf.ts';
import { onSheet, type View } from './view.ts';

/** Below this the arc is shorter than its own stroke, px. */
const LEAST_ARC = 0.5;

/** An angle on the sheet: both its lines carried out to `line` (px, x), the arc between them, the text beyond. */
export function drawAngle(place: AnglePlace, text: string, view: View, line: number): Drawn {
  const centre = onSheet(view, [0, 0]);
  const side = place.side === 'left' ? -1 : 1;
  const radius = Math.abs(line - centre[0]);
  // on the sheet y points down: the turned line runs against the angle's sign, mirrored on the left
  const ray = (angle: number): Point => [side * Math.cos(angle), -side * Math.sin(angle)];
  const on = (angle: number): Point => plus(centre, ray(angle), radius);
  const stretch = (angle: number) =>
    [plus(centre, ray(angle), place.begin * view.scale), plus(centre, ray(angle), radius + PAST)] as const;
  const arc = Math.abs(place.angle) * radius;
  const outside = arc < ROOM_FOR_ARROWS;
  const tail = (outside ? TAIL : 0) / radius;
  const sign = place.angle < 0 ? -1 : 1;
  const [from, to] = [-sign * tail, place.angle + sign * tail];
  const along = (angle: number, way: number): Point => {
    const [x, y] = ray(angle);
    return [way * y, -way * x];
  };
  const inward = outside ? sign : -sign;
  const seen = arc >= LEAST_ARC;
  return {
    lines: seen ? [stretch(0), stretch(place.angle)] : [stretch(0)],
    bow: seen ? `M${say(on(from))}A${radius} ${radius} 0 0 ${sign > 0 ? 0 : 1} ${say(on(to))}` : undefined,
    arrows: seen
      ? [
          { tip: on(0), way: along(0, inward) },
          { tip: on(place.angle), way: along(place.angle, -inward) },
        ]
      : [],
    label: labelAt(text, plus(on(place.angle / 2), [side, 0], 5 + labelWidth(text) / 2), 0),
  };
}
