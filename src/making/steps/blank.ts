import { curvesBox } from '../../../models/curves/curvesBox.ts';
import { roundedUp } from '../../trade/roundedUp.ts';
import type { Job } from '../job.ts';
import { length, type Step } from '../step.ts';

/** What a sawn blank is thicker than planed: common practice. mm */
const TO_PLANE = 1;

/** Sawing the blank from the board. */
export function blank({ design, curves, workshop, low, face }: Job): Step {
  const [x0, y0, , x1, y1] = curvesBox(curves);
  const around = workshop.blankAllowance;
  return {
    id: 'blank',
    title: 'Blank',
    work: [
      `Saw a blank of ${design.timber.name}, the grain along its length and its growth rings even over the width; no knot or run-out where slot and pins come.`,
    ],
    settings: [
      length('blank.length', 'Length, along the grain', x1 - x0 + 2 * around, {
        formula: `the bridge’s ${(x1 - x0).toFixed(1)} + 2 × ${around} allowance`,
        decimals: 1,
      }),
      length('blank.depth', 'Depth, across the grain', y1 - y0 + 2 * around, {
        formula: `the outline’s ${(y1 - y0).toFixed(1)} from front to back + 2 × ${around} allowance`,
        decimals: 1,
      }),
      length('blank.thickness', 'Thickness, at least', roundedUp(face - low + TO_PLANE, 1), {
        formula: `the planed thickness ${(face - low).toFixed(2)} + ${TO_PLANE} to plane (common practice), rounded up`,
        decimals: 1,
      }),
    ],
    check: 'Length, depth and thickness with a rule: none is less than said.',
    cautions: ['dust', 'listed', 'machines', 'strength', 'first'],
    needs: ['saw', 'rule'],
    template: undefined,
  };
}
