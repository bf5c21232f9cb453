import type { Job } from '../job.ts';
import { count, length, type Step } from '../step.ts';

/** Grits, coarse to fine: common practice. */
const GRITS = [150, 220, 320, 400, 600] as const;

/** Taking off the allowance through the grits. */
export function finishing({ left }: Job): Step {
  return {
    id: 'finishing',
    title: 'Finishing',
    work: [
      `Sand top and edges through ${GRITS.join(', ')}, along the grain, each until the scratches of the one before are gone; a block behind the paper, so that edges stay true. Then buff.`,
      'No abrasive on the glue face, in the slot or in the holes, and no oil or wax before the bridge is glued.',
    ],
    settings: [
      length('finishing.allowance', 'To come off top and edges', left, {
        formula: 'as set in the workshop: left at every step before',
        known: 'set',
      }),
      count('finishing.grit', 'Last grit', GRITS[GRITS.length - 1] ?? 600, {
        formula: 'then buffed',
        known: 'practice',
      }),
    ],
    check: 'Thickness at the middle and at the tips again, in the light of a low lamp.',
    cautions: ['dust', 'machines', 'first'],
    needs: ['abrasive papers', 'block', 'buffing wheel or cloth'],
    template: undefined,
  };
}
