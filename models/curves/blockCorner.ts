import { meetCircles } from './roundCorner.ts';
import { type Arc, distance, type Point, pointAt, type Segment } from './segment.ts';

/** The block's end before the shoulder took it off: where crown and blend, carried on, would meet. */
export function blockCorner(crown: Arc, shoulder: Segment, blend: Arc): Point {
  const near = pointAt(shoulder, 0.5);
  const [a, b] = meetCircles(crown.centre, crown.radius, blend.centre, blend.radius);
  if (!a || !b) return near;
  return distance(a, near) < distance(b, near) ? a : b;
}
