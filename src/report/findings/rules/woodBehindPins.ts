import type { Point } from '../../../../models/curves/segment.ts';
import { OWN_LEVEL } from '../../../trade/ownLevel.ts';
import { below, mm } from '../../said.ts';
import { nearestPlace } from '../nearestPlace.ts';
import { between } from '../places.ts';
import { rule } from '../rule.ts';

export const woodBehindPins = rule({
  id: 'wood-behind-pins',
  about: 'wood',
  watches: 'The wood from every pin hole to the bridge’s edge.',
  judge: ({ accepted: { design, curves } }) => {
    const { behindPins: limit } = design.limits;
    const thin = curves.pins.flatMap((pin) => {
      const near = nearestPlace(curves.outline, pin.at);
      const wood = near.distance - pin.reach;
      if (!below(wood, limit)) return [];
      const share = pin.reach / near.distance;
      const rim: Point = [
        pin.at[0] + share * (near.point[0] - pin.at[0]),
        pin.at[1] + share * (near.point[1] - pin.at[1]),
      ];
      return [{ wood, rim, edge: near.point }];
    });
    if (thin.length === 0) return undefined;
    const least = Math.min(...thin.map(({ wood }) => wood));
    return {
      severity: 'warning',
      text: `${mm(least)} of wood stand between a pin hole at its widest and the outline, before the edge is worked: it breaks out under drill or reamer.`,
      found: mm(least),
      limit: `at least ${mm(limit)}`,
      source: OWN_LEVEL,
      path: 'pins.behindSlot',
      limitPath: 'limits.behindPins',
      place: thin.map(({ rim, edge }) => between(curves, rim, edge)),
      mends: [
        'footprint.depthCentre',
        'pins.behindSlot',
        'pins.bevelDiameter',
        'footprint.slotBehindFront',
        'pins.rowGap',
      ],
    };
  },
});
