import { edgeBreaks } from './edgeBreaks.ts';
import type { Plan } from './plan.ts';
import type { Rim, Spot } from './rim.ts';
import type { Top } from './top.ts';

/** The edge where nothing is taken off: top and wall meet in a line. */
export function sharpRim(plan: Plan, top: Top): Rim {
  return {
    across: (s) => {
      const { x, y } = plan.at(s);
      const spot: Spot = [x, y, top.height(x, 0)];
      return () => spot;
    },
    section: 'point',
    wallAt: (s) => s,
    breaks: edgeBreaks(plan, 0, top.joints(0)),
  };
}
