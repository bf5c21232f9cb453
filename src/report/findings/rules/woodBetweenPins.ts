import { distance, type Point } from '../../../../models/curves/segment.ts';
import { OWN_LEVEL } from '../../../trade/ownLevel.ts';
import { below, mm } from '../../said.ts';
import { between } from '../places.ts';
import { rule } from '../rule.ts';

export const woodBetweenPins = rule({
  id: 'wood-between-pins',
  about: 'wood',
  watches: 'The wood between one pin hole and the next, in both rows.',
  judge: ({ accepted: { design, curves } }) => {
    const { betweenPins: limit } = design.limits;
    const thin = curves.pins.flatMap((a, i) =>
      curves.pins.slice(i + 1).flatMap((b) => {
        const far = distance(a.at, b.at);
        const wood = far - a.reach - b.reach;
        if (!below(wood, limit)) return [];
        const at = (share: number): Point => [
          a.at[0] + share * (b.at[0] - a.at[0]),
          a.at[1] + share * (b.at[1] - a.at[1]),
        ];
        return [{ wood, ends: [at(a.reach / far), at(1 - b.reach / far)] as const }];
      }),
    );
    if (thin.length === 0) return undefined;
    const least = Math.min(...thin.map(({ wood }) => wood));
    return {
      severity: 'warning',
      text: `${mm(least)} of wood stand between neighbouring pin holes at the top, reamed and bevelled: a row of holes so close is where a bridge splits along its grain.`,
      found: mm(least),
      limit: `at least ${mm(limit)}`,
      source: OWN_LEVEL,
      path: 'pins.spread',
      limitPath: 'limits.betweenPins',
      place: thin.map(({ ends: [a, b] }) => between(curves, a, b)),
      mends: ['pins.spread', 'pins.bevelDiameter', 'pins.rowGap', 'pins.mouth', 'pins.drill'],
    };
  },
});
