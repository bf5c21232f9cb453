import { within } from '../../trade/tolerances.ts';
import type { Job } from '../job.ts';
import { AS_DESIGNED, length, type Step } from '../step.ts';

/** Breaking the edge round the top; nothing where it stays square. */
export function edge({ curves }: Job): Step | undefined {
  const made = curves.edge;
  if (made.kind === 'none') return undefined;
  const round = made.kind === 'round';
  return {
    id: 'edge',
    title: round ? 'Round-over' : 'Chamfer',
    work: [
      round
        ? 'Gauge a line this far from the edge on top and on the sides, file a chamfer to the lines, then round it.'
        : 'Gauge a line this far from the edge on top and on the sides, and file down to both lines, always toward the wood.',
      'Never on the glue face: its edge stays sharp.',
    ],
    settings: [
      length('edge.size', round ? 'Radius' : 'Width on each face', made.size, {
        ...AS_DESIGNED,
        tolerance: within(0.2, 'common practice'),
      }),
    ],
    check: round
      ? 'A radius gauge at block, blend and tips.'
      : 'The chamfer’s two lines stand evenly all round.',
    cautions: ['dust', 'first'],
    needs: ['marking gauge', 'files', round ? 'radius gauge' : 'rule'],
    template: undefined,
  };
}
