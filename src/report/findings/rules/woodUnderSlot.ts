import { below, mm } from '../../said.ts';
import { woodUnderSlot as woodUnder } from '../../woodUnderSlot.ts';
import { floorLine } from '../places.ts';
import { rule } from '../rule.ts';

export const woodUnderSlot = rule({
  id: 'wood-under-slot',
  about: 'wood',
  watches: 'The wood left under the slot.',
  judge: ({ accepted: { design, curves } }) => {
    const { woodUnder: limit } = design.limits;
    const wood = woodUnder(curves);
    if (!below(wood, limit)) return undefined;
    return {
      severity: 'warning',
      text: `${mm(wood)} of wood stay under the slot where it is thinnest: the bridge may crack along its floor, between a saddle that is pushed forward and the glue.`,
      found: mm(wood),
      limit: `at least ${mm(limit)}`,
      source: 'Common practice (2 to 3 mm), no source.',
      path: 'saddle.depth',
      limitPath: 'limits.woodUnder',
      place: [floorLine(curves)],
      mends: ['saddle.woodUnder', 'saddle.depth', 'top.thickness', 'saddle.showing'],
    };
  },
});
