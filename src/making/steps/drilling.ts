import { TOLERANCES } from '../../trade/tolerances.ts';
import type { Job } from '../job.ts';
import { AS_DESIGNED, length, type Step } from '../step.ts';

/** Half the point angle of a usual twist drill, degrees: 118° in all, common practice. */
const HALF_POINT = 59;
/** How far the drill's full width goes into the backing board, mm: common practice. */
const INTO_BOARD = 1;

/** Drilling the pin holes, straight through, before anything is hollow or crowned. */
export function drilling({ design: { pins }, curves, workshop, low, face }: Job): Step {
  const press = workshop.drill === 'press';
  const point = pins.drill / 2 / Math.tan((HALF_POINT * Math.PI) / 180);
  const thick = face - low;
  return {
    id: 'drilling',
    title: 'Pin holes',
    work: [
      press
        ? 'Clamp the blank in a fixture on a backing board of hard, flat scrap. Set the depth stop, bring the drill down on each centre and drill through, clearing the chips often.'
        : 'Clamp the blank on a backing board of hard, flat scrap. Drill through a guide block that holds the drill square, clamped over each centre in turn.',
      'A fresh piece of board under every hole, or its edge breaks out.',
    ],
    settings: [
      length('drilling.diameter', 'Drill', pins.drill, { ...AS_DESIGNED, tolerance: TOLERANCES['pin-hole'] }),
      length(
        'drilling.stop',
        press ? 'Depth stop, point below the upper face' : 'Collar on the drill, point below the upper face',
        thick + point + INTO_BOARD,
        {
          formula: `planed thickness ${thick.toFixed(2)} + ${point.toFixed(2)} of a ${2 * HALF_POINT}° point + ${INTO_BOARD} into the board (common practice)`,
          decimals: 1,
        },
      ),
    ],
    check: `Measure all ${curves.pins.length} holes with the drill’s shank or a pin gauge, and look through them along the square.`,
    cautions: ['dust', 'machines', 'first'],
    needs: press
      ? ['drill press', 'fixture', 'backing board']
      : ['hand drill', 'guide block', 'backing board', 'clamps'],
    template: 'drilling',
  };
}
