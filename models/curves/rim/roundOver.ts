import { edgeBreaks } from './edgeBreaks.ts';
import { facesAlongY, type Plan } from './plan.ts';
import type { EdgeCut } from './rim.ts';
import { rootOfFalling } from './root.ts';
import type { Top } from './top.ts';

/**
 * The round-over of radius `r` that a ball leaves when it rolls along the edge, touching wall and top from inside: its
 * centre runs `r` inside the outline in plan and on the profile moved in by `r`. The wood that is left is what such
 * balls fill, so the height over a place is the highest that any ball centre within `r` of it reaches.
 */
export function roundOver(r: number, plan: Plan, top: Top): EdgeCut {
  const centre = (s: number) => {
    const p = plan.at(s);
    return { x: p.x - r * p.dy, y: p.y + r * p.dx, dx: p.dx, dy: p.dy, bend: p.bend };
  };

  /** Whether the ball that touches the top over (x, y) stays inside: then the top there is uncut. */
  const touchesTop = (x: number, y: number, distance: number): boolean => {
    const slope = top.slope(x, 0);
    const aside = (r * slope) / Math.sqrt(1 + slope * slope);
    if (distance - Math.abs(aside) >= r) return true;
    if (distance + Math.abs(aside) < r) return false;
    return plan.contains(x + aside, y) && !plan.nearest(x + aside, y, r);
  };

  return {
    reach: 2 * r,
    section: 'arc',
    breaks: edgeBreaks(plan, r, top.joints(r)),
    height: (x, y, near) => {
      const { s, distance } = near;
      const flat = Math.sqrt(Math.max(0, r * r - (r - Math.min(distance, r)) ** 2));
      if (facesAlongY(plan, near, r)) {
        // over a straight wall facing ±y the balls' envelope is the profile moved in by what they leave
        return top.height(x, r - flat);
      }
      if (touchesTop(x, y, distance)) return top.height(x, 0);
      // the highest ball is the one whose centre's path is square to the line from centre to surface
      const offSquare = (along: number) => {
        const c = centre(along);
        const [px, py] = [x - c.x, y - c.y];
        const up = Math.sqrt(Math.max(0, r * r - px * px - py * py));
        return top.slope(c.x, r) * c.dx * up + px * c.dx + py * c.dy;
      };
      const c0 = centre(s);
      const slope = top.slope(c0.x, r) * c0.dx;
      const stretch = Math.max(0.1, 1 - c0.bend * r);
      const guess = s + (flat * slope) / Math.sqrt(1 + slope * slope) / stretch;
      const c = centre(rootOfFalling(offSquare, s, 4 * r, guess));
      return top.height(c.x, r) + Math.sqrt(Math.max(0, r * r - (x - c.x) ** 2 - (y - c.y) ** 2));
    },
    // the ball touches the wall square to the outline
    wallAt: (s) => s,
    across: (s) => {
      const c = centre(s);
      const z = top.height(c.x, r);
      const slope = top.slope(c.x, r);
      const steep = Math.sqrt(1 + slope * slope);
      // unit vectors from the centre to where the ball touches top and wall, and the angle between them
      const [topX, topZ] = [-slope / steep, 1 / steep];
      const [wallX, wallY] = [c.dy, -c.dx];
      const angle = Math.acos(topX * wallX);
      return (share) => {
        const [a, b] = [
          Math.sin((1 - share) * angle) / Math.sin(angle),
          Math.sin(share * angle) / Math.sin(angle),
        ];
        return [c.x + r * (a * topX + b * wallX), c.y + r * b * wallY, z + r * a * topZ];
      };
    },
  };
}
