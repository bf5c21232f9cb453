import type { Curves, Pin } from '../../../../models/curves/curves.ts';
import { holeRadius } from '../../../../models/curves/holeRadius.ts';
import type { Point } from '../../../../models/curves/segment.ts';
import { floorOver } from '../../../../models/curves/slot.ts';
import { OWN_LEVEL } from '../../../trade/ownLevel.ts';
import { below, mm } from '../../said.ts';
import { overTop, slotReach } from '../places.ts';
import { rule } from '../rule.ts';

export const woodBehindSlot = rule({
  id: 'wood-behind-slot',
  about: 'wood',
  watches: 'The wood between slot and pin holes.',
  judge: ({ accepted: { design, curves } }) => {
    const { woodBehind: limit } = design.limits;
    const gaps = curves.pins.flatMap((pin) => [gapAt(curves, pin, 'top'), gapAt(curves, pin, 'floor')]);
    const thin = gaps.filter(({ wood }) => below(wood, limit));
    const worst = thin.reduce<Gap | undefined>((a, b) => (a && a.wood <= b.wood ? a : b), undefined);
    if (!worst) return undefined;
    return {
      severity: 'warning',
      text: `${mm(worst.wood)} of wood stand between slot and pin holes ${worst.at === 'top' ? 'at the top, bevels counted' : 'at the slot’s floor'}, the holes reamed: so thin a wall chips under the reamer and gives way behind the saddle.`,
      found: mm(worst.wood),
      limit: `at least ${mm(limit)}`,
      source: OWN_LEVEL,
      path: 'pins.behindSlot',
      limitPath: 'limits.woodBehind',
      place: thin.map(({ hole, wall }) => overTop(curves, [hole, wall])),
      mends: ['pins.behindSlot', 'pins.bevelDiameter', 'pins.mouth', 'pins.drill', 'saddle.slotWidth'],
    };
  },
});

interface Gap {
  readonly at: 'top' | 'floor';
  readonly wood: number;
  /** Its two ends in plan. */
  readonly hole: Point;
  readonly wall: Point;
}

/** Wood between the slot and a hole in a level plane, at the top or at the slot's floor. */
function gapAt(curves: Curves, pin: Pin, at: Gap['at']): Gap {
  const { slot, profile } = curves;
  const [x, y] = pin.at;
  const z = at === 'top' ? pin.top : Math.min(pin.top, floorOver(slot, profile.thickness, x));
  const radius = at === 'top' ? pin.reach : holeRadius(pin.outline.reamed, z);
  const [cos, sin] = [Math.cos(slot.angle), Math.sin(slot.angle)];
  // the level cut through a leaning slot is wider across by 1/cos, and further forward the lower it is
  const r = slot.width / 2 / Math.cos(slot.tilt);
  const middle = (profile.thickness - z) * Math.tan(slot.tilt);
  const half = slotReach(curves) - (slot.roundEnds ? slot.width / 2 : 0);
  const [u, across] = [x * cos + y * sin, y * cos - x * sin];
  const nearest = Math.max(-half, Math.min(half, u));
  const [du, da] = [u - nearest, across - middle];
  const far = Math.hypot(du, da);
  const toPart = (along: number, a: number): Point => [along * cos - a * sin, along * sin + a * cos];
  return {
    at,
    wood: far - r - radius,
    hole: toPart(u - (du / far) * radius, across - (da / far) * radius),
    wall: toPart(nearest + (du / far) * r, middle + (da / far) * r),
  };
}
