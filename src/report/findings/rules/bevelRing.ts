import { OWN_LEVEL } from '../../../trade/ownLevel.ts';
import { bevelWidth } from '../../bevelWidth.ts';
import { below, mm } from '../../said.ts';
import { roundPin } from '../places.ts';
import { rule } from '../rule.ts';

export const bevelRing = rule({
  id: 'bevel-ring',
  about: 'making',
  watches: 'How much of the bevel round a pin hole the reamer leaves.',
  judge: ({ accepted: { design, curves } }) => {
    const { bevelRing: limit } = design.limits;
    if (design.pins.bevel === 'none' || design.pins.taper === 0) return undefined;
    const width = Math.min(...curves.pins.map((pin) => bevelWidth(pin, 'reamed')));
    if (!below(width, limit)) return undefined;
    return {
      severity: 'warning',
      text: `Reaming leaves a bevel of ${mm(width)} round the holes: the reamer’s edges tear a ring so narrow, and what is left looks uneven from hole to hole.`,
      found: mm(width),
      limit: `at least ${mm(limit)}`,
      source: OWN_LEVEL,
      path: 'pins.bevelDiameter',
      limitPath: 'limits.bevelRing',
      place: curves.pins.map((_, i) => roundPin(curves, i)),
      mends: ['pins.bevelDiameter', 'pins.mouth'],
    };
  },
});
