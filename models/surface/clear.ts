import type { Plan, PlanBox } from '../curves/rim/plan.ts';

/** Whether a box in plan lies inside the outline and everywhere farther than `reach` mm from it. */
export function clear(plan: Plan, box: PlanBox, reach: number): boolean {
  const [dx, dy] = [box.x1 - box.x0, box.y1 - box.y0];
  // looked at in pieces about as long as wide, each by its middle
  const n = Math.max(1, Math.ceil(dx / dy));
  const m = Math.max(1, Math.ceil(dy / dx));
  const far = reach + Math.hypot(dx / n, dy / m) / 2;
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < m; k++) {
      const [x, y] = [box.x0 + (dx * (i + 0.5)) / n, box.y0 + (dy * (k + 0.5)) / m];
      if (!plan.contains(x, y) || plan.nearest(x, y, far)) return false;
    }
  }
  return true;
}
