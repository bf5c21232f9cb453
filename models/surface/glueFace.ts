import type { Curves, Holes } from '../curves/curves.ts';
import { holeRadius } from '../curves/holeRadius.ts';
import type { Point } from '../curves/segment.ts';
import { undersideHeight } from '../curves/underside.ts';
import { chordBreaks, chordsOf } from './chords.ts';
import { betweenRounded, gauss, panels } from './gauss.ts';
import { blankOf } from './parts.ts';

export interface GlueFace {
  readonly areaMm2: number;
  /** In plan (x, y). */
  readonly centroidMm: Point;
  /** Second moments about the centroid: x is ∫y² dA (about the axis along X), y is ∫x² dA, xy is ∫xy dA. */
  readonly secondMm4: { readonly x: number; readonly y: number; readonly xy: number };
  /** From the centroid to the edge nearest the nut, mm. */
  readonly frontMm: number;
  /** From the centroid to the edge nearest the tail, mm. */
  readonly backMm: number;
}

/**
 * The face that is glued, seen in plan: inside the outline, less the pin holes as wide as they meet it at their
 * centres. Neglected: that a dome's face is larger than its plan (1e-5 of it), and that a tapered hole meets a sloping
 * face in an ellipse.
 */
export function glueFace(curves: Curves, holes: Holes): GlueFace {
  const { plan, underside } = blankOf(curves);
  const sum = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
  const chords = chordsOf(plan.pieces);
  const { x0, x1, y0, y1 } = plan.box;
  const stops = panels(x0, x1, chordBreaks(plan.pieces));
  stops.slice(1).forEach((to, i) => {
    betweenRounded(stops[i] as number, to, gauss(12), (x, dx) => {
      for (const { back, front } of chords(x)) {
        const [a, b] = [back.y, front.y];
        const area = (b - a) * dx;
        const y = (area * (a + b)) / 2;
        sum.area += area;
        sum.x += area * x;
        sum.y += y;
        sum.xx += area * x * x;
        sum.yy += (area * (a * a + a * b + b * b)) / 3;
        sum.xy += y * x;
      }
    });
  });
  for (const pin of curves.pins) {
    const [x, y] = pin.at;
    const square = holeRadius(pin.outline[holes], undersideHeight(underside, x, y)) ** 2;
    const area = Math.PI * square;
    sum.area -= area;
    sum.x -= area * x;
    sum.y -= area * y;
    sum.xx -= area * (x * x + square / 4);
    sum.yy -= area * (y * y + square / 4);
    sum.xy -= area * x * y;
  }
  const [x, y] = [sum.x / sum.area, sum.y / sum.area];
  return {
    areaMm2: sum.area,
    centroidMm: [x, y],
    secondMm4: { x: sum.yy - sum.y * y, y: sum.xx - sum.x * x, xy: sum.xy - sum.x * y },
    frontMm: y1 - y,
    backMm: y - y0,
  };
}
