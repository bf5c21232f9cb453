import { within } from '../../trade/tolerances.ts';
import type { Job } from '../job.ts';
import { length, type Step } from '../step.ts';

/** Planing both faces flat and parallel. */
export function thickness({ design, workshop, low, face }: Job): Step {
  return {
    id: 'thickness',
    title: 'Thickness',
    work: [
      'Plane or sand the lower face flat, then the upper face parallel to it. Slot and holes are measured from these faces: write the thickness down.',
    ],
    settings: [
      length('thickness.planed', 'Planed thickness', face - low, {
        formula: `finished ${design.top.thickness} at the middle + ${(-low).toFixed(2)} that the underside falls to its lowest place + ${workshop.topAllowance} over the crown`,
        tolerance: within(0.1, 'own: how deep the slot comes is reckoned from it'),
      }),
    ],
    check: 'With a calliper at the four corners and the middle: all alike within 0.1 mm.',
    cautions: ['dust', 'machines', 'first'],
    needs: ['plane or sander', 'calliper'],
    template: undefined,
  };
}
