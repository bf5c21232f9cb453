import type { Holes, Pin } from '../curves/curves.ts';
import type { Point } from '../curves/segment.ts';
import type { Cut } from './cut.ts';
import { between, gauss, panels } from './gauss.ts';

/** Directions round a hole in its quadrature: what a hole takes is a smooth periodic function of the direction. */
const ROUND = 16;

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
      for (let i = 0; i < ROUND; i++) {
        const angle = (2 * Math.PI * (i + 0.5)) / ROUND;
        const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
        const x = (radius: number) => cx + radius * ux;
        // the flare runs out where it meets the crown, higher on one side than on the other; a taper meets the underside
        const rim = meets(wall, (radius) => body.top(x(radius)));
        const foot = meets(wall, (radius) => body.under(x(radius), cy + radius * uy));
        const stops = panels(0, rim, [...radii, foot]);
        stops.slice(1).forEach((to, k) => {
          between(stops[k] as number, to, gauss(4), (radius, dr) => {
            visit(x(radius), cy + radius * uy, (radius * dr * 2 * Math.PI) / ROUND);
          });
        });
      }
    },
    turnsAt: (x, body) => {
      const aside = Math.abs(x - cx);
      if (aside >= widest) return [];
      const rim = meets(wall, () => body.top(x));
      const foot = meets(wall, () => body.under(x, cy));
      return [foot, ...wall.map((p) => p[0]).filter((r) => r > foot && r < rim), rim]
        .filter((radius) => radius > aside)
        .flatMap((radius) => {
          const half = Math.sqrt(radius * radius - aside * aside);
          return [cy - half, cy + half];
        });
    },
  };
}

/** Radius at which the wall has risen to a face's height over it; that of its upper end if it never does. */
function meets(wall: readonly Point[], face: (radius: number) => number): number {
  for (let i = 1; i < wall.length; i++) {
    const [a, b] = [wall[i - 1] as Point, wall[i] as Point];
    if (b[1] < face(b[0])) continue;
    // no face is nearly as steep as a wall: each round comes nearer by their slopes' ratio
    let radius = a[0];
    for (let k = 0; k < 8 && b[0] > a[0]; k++) {
      const next = a[0] + ((face(radius) - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
      const moved = Math.abs(next - radius);
      radius = Math.max(a[0], Math.min(next, b[0]));
      if (moved < 1e-9) break;
    }
    return radius;
  }
  return (wall[wall.length - 1] as Point)[0];
}
