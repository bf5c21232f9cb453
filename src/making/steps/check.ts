import { slotReach } from '../../../models/curves/slotReach.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { massG, surfaceFigures } from '../../../models/surface/figures.ts';
import { woodUnderSlot } from '../../report/woodUnderSlot.ts';
import { general, TOLERANCES, within } from '../../trade/tolerances.ts';
import { type Job, slotOn, trebleSign } from '../job.ts';
import { slotJig } from '../slotJig.ts';
import { AS_DESIGNED, length, mass, type Setting, type Step } from '../step.ts';

/** The finished bridge measured over, before it is glued. */
export function check(job: Job): Step {
  return {
    id: 'check',
    title: 'Measured over',
    work: [
      'Measure the finished bridge over. What is off is better known now: once thickness and slot depth are typed in, the saddle’s heights are given anew.',
    ],
    settings: settings(job),
    check: 'Everything in this list, on the finished bridge.',
    cautions: ['first'],
    needs: ['calliper', 'rule', 'scale'],
    template: undefined,
  };
}

function settings(job: Job): readonly Setting[] {
  const { design, curves, edges, workshop } = job;
  const { top, saddle, footprint, pins, timber } = design;
  const { slot, profile } = curves;
  const at = (u: number) => {
    const z = topHeight(profile, u * Math.cos(slot.angle));
    return slotOn(job, u, z)[1] - edges.backMiddle;
  };
  const half = slotReach(curves);
  const width = workshop.slot === 'router' ? slotJig(job).width : slot.width;
  const bySquare = 'from the back edge on the centre line, by square';
  const ends = (['treble', 'bass'] as const).map((end) =>
    length(
      `check.slot-${end}`,
      slot.roundEnds
        ? `Slot’s ${end} end to the back edge`
        : `Slot to the back edge where the crown ends, ${end} side`,
      at((end === 'treble' ? 1 : -1) * trebleSign(job) * half),
      { formula: bySquare, tolerance: TOLERANCES['slot-place'] },
    ),
  );
  const { volumeMm3 } = surfaceFigures(curves, 'drilled');
  const grams = massG(volumeMm3, timber.density);
  return [
    length('check.length', 'Length', footprint.length, {
      ...AS_DESIGNED,
      tolerance: general(footprint.length),
    }),
    length('check.depth', 'Depth on the centre line', footprint.depthCentre, {
      ...AS_DESIGNED,
      tolerance: general(footprint.depthCentre),
    }),
    length('check.thickness', 'Thickness at the middle, beside the slot', top.thickness, {
      ...AS_DESIGNED,
      tolerance: TOLERANCES.crown,
    }),
    length('check.tip', 'Thickness at the tips', top.tip, {
      ...AS_DESIGNED,
      tolerance: within(0.2, 'common practice'),
    }),
    length('check.slot-width', 'Slot’s width', width, {
      ...(width === slot.width
        ? AS_DESIGNED
        : { formula: 'the cutter’s, as set in the workshop', known: 'set' }),
      decimals: 3,
      tolerance: TOLERANCES['slot-width'],
    }),
    length('check.slot-depth', 'Slot’s depth in the middle, along its walls', saddle.depth, {
      ...AS_DESIGNED,
      tolerance: TOLERANCES['slot-depth'],
    }),
    ...ends,
    length('check.wood-under', 'Least wood under the slot', woodUnderSlot(curves), {
      formula: 'its floor over the glue face, along both walls',
    }),
    length('check.pin-spread', 'First to last pin', pins.spread, {
      ...AS_DESIGNED,
      tolerance: TOLERANCES['pin-place'],
    }),
    mass('check.mass', 'Mass, holes as drilled', grams, {
      formula: `${(volumeMm3 / 1000).toFixed(2)} cm³ × ${timber.density} kg/m³`,
      tolerance: within(grams / 10, 'common practice: a timber’s density varies by a tenth'),
    }),
  ];
}
