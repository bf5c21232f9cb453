import { OWN_LEVEL } from '../../../trade/ownLevel.ts';
import { below, mm } from '../../said.ts';
import { tipWall as wallLeft } from '../../tipWall.ts';
import { tipLines } from '../places.ts';
import { rule } from '../rule.ts';

export const tipWall = rule({
  id: 'tip-wall',
  about: 'wood',
  watches: 'What the top edge leaves standing of the tips’ end walls.',
  judge: ({ accepted: { design, curves } }) => {
    const { tipWall: limit } = design.limits;
    const wall = wallLeft(design);
    if (!below(wall, limit)) return undefined;
    return {
      severity: 'warning',
      text: `Under an edge of ${mm(design.top.edgeSize)} the tips keep a wall of ${mm(wall)}: sanding takes the rest to a feather edge that lifts and chips.`,
      found: mm(wall),
      limit: `at least ${mm(limit)}`,
      source: OWN_LEVEL,
      path: 'top.edgeSize',
      limitPath: 'limits.tipWall',
      place: tipLines(curves),
      mends: ['top.edgeSize', 'top.tip', 'aim.tip', 'aim.mass'],
    };
  },
});
