import { drop } from '../../../models/curves/profile.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { general, TOLERANCES, within } from '../../trade/tolerances.ts';
import { depthFrom, type Job } from '../job.ts';
import { AS_DESIGNED, length, type Step } from '../step.ts';

/** Shaping the top of the middle block to its radius. */
export function crown(job: Job): Step {
  const { design, curves, left } = job;
  const { profile, slot } = curves;
  const { thickness, block } = design.top;
  const end = slot.halfLength * Math.cos(slot.angle);
  const onTop = left > 0 ? `, ${left} for finishing still on` : '';
  return {
    id: 'crown',
    title: 'Crown',
    work: [
      'The crown falls from the centre line to both ends of the block. Plane or sand facets from front to back, each lower than the one nearer the middle, then sand along the bridge with a block hollowed to the crown’s radius, until the gauge shows no light.',
      'The wings come next: over them only the saw line counts.',
    ],
    settings: [
      length('crown.radius', 'Crown’s radius', profile.crownRadius, {
        ...(design.top.crown === 'set'
          ? AS_DESIGNED
          : { formula: 'the fretboard’s, carried on to the saddle' }),
        decimals: 1,
      }),
      length('crown.thickness', 'Thickness at the middle, beside the slot', thickness + left, {
        formula: `finished ${thickness}${left > 0 ? ` + ${left} for finishing` : ''}`,
        tolerance: TOLERANCES.crown,
      }),
      length('crown.fall', 'Fall from the middle to the block’s ends', drop(profile.crownRadius, block / 2), {
        formula: `R − √(R² − x²), R ${profile.crownRadius.toFixed(1)}, x ${block / 2}, before the shoulder is rounded`,
        tolerance: within(0.15, 'common practice'),
      }),
      length(
        'crown.left-middle',
        'Left of the slot’s depth in the middle',
        depthFrom(job, thickness + left, 0),
        {
          formula: `along its walls${onTop}`,
          tolerance: TOLERANCES['slot-depth'],
        },
      ),
      ...(slot.roundEnds
        ? [
            length(
              'crown.left-ends',
              'Left of it at the slot’s ends',
              depthFrom(job, topHeight(profile, end) + left, slot.halfLength),
              {
                formula: `the crown has fallen there, ${end.toFixed(2)} from the centre line${onTop}`,
                tolerance: TOLERANCES['slot-depth'],
              },
            ),
          ]
        : []),
      length('crown.block', 'Length of the block', block, {
        ...AS_DESIGNED,
        tolerance: general(block),
      }),
    ],
    check:
      'The gauge along the top, before and behind the slot; the slot’s depth in the middle and at its ends.',
    cautions: ['dust', 'first'],
    needs: ['block plane', 'hollow sanding block', 'crown gauge', 'calliper'],
    template: 'gauges',
  };
}
