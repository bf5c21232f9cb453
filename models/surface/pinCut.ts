import type { Holes, Pin } from '../curves/curves.ts';
import type { Point } from '../curves/segment.ts';
import type { Cut } from './cut.ts';
import { between, gauss, panels } from './gauss.ts';

/** Directions round a hole in its quadrature: what a hole takes is a smooth periodic function of the direction. */
const ROUND = 24;

/** A pin hole. Drill, reamer and countersink leave it nowhere narrower above than below, so it is open upward. */
export function pinCut(pin: Pin, holes: Holes): Cut {
  // the outline's first and last points lie on the axis, those between them on the wall
  const wall = pin.outline[holes].slice(1, -1);
  const [lowest, highest] = [wall[0] as Point, wall[wall.length - 1] as Point];
  const widest = highest[0];
  const [cx, cy] = pin.at;

  /** Lowest z at which the hole is so wide. */
  const bottom = (radius: number): number => {
    if (radius <= lowest[0]) return lowest[1];
    for (let i = 1; i < wall.length; i++) {
      const [a, b] = [wall[i - 1] as Point, wall[i] as Point];
      if (radius <= b[0]) return a[1] + ((radius - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
    }
    return Number.POSITIVE_INFINITY;
  };

  return {
    box: { x0: cx - widest, y0: cy - widest, x1: cx + widest, y1: cy + widest },
    landmarks: () => [pin.at, [cx - widest, cy], [cx + widest, cy], [cx, cy - widest], [cx, cy + widest]],
    removed: (x, y) => {
      const radius = Math.hypot(x - cx, y - cy);
      return radius <= widest ? [bottom(radius), highest[1]] : undefined;
    },
    places: (body, visit) => {
      const radii = wall.map((p) => p[0]);
      const first = (holds: (radius: number) => boolean) => firstOf(holds, widest);
      for (let i = 0; i < ROUND; i++) {
        const angle = (2 * Math.PI * (i + 0.5)) / ROUND;
        const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
        const x = (radius: number) => cx + radius * ux;
        // the flare runs out where it meets the crown, higher on one side than on the other; a taper meets the underside
        const rim = first((radius) => bottom(radius) >= body.top(x(radius)));
        const foot = first((radius) => bottom(radius) >= body.under(x(radius), cy + radius * uy));
        const stops = panels(0, widest, [...radii, rim, foot]);
        stops.slice(1).forEach((to, k) => {
          between(stops[k] as number, to, gauss(5), (radius, dr) => {
            visit(x(radius), cy + radius * uy, (radius * dr * 2 * Math.PI) / ROUND);
          });
        });
      }
    },
  };
}

/** Smallest radius at which something holds that then holds on; the widest if it never does. */
function firstOf(holds: (radius: number) => boolean, widest: number): number {
  let [a, b] = [0, widest];
  for (let k = 0; k < 40; k++) {
    const middle = (a + b) / 2;
    if (holds(middle)) b = middle;
    else a = middle;
  }
  return b;
}
