import { describe, expect, test } from 'vitest';
import { slotToPart } from '../../models/curves/slot.ts';
import { crownPlace } from '../../src/trade/crownPlace.ts';
import { curves } from '../support/change.ts';

describe('where a string crosses the crown', () => {
  test('on the slot’s centre line, the bass behind; filed back it lies as much behind', () => {
    const [x, y] = crownPlace(-27.5, 3, 0, 0, 3);
    expect([x, y]).toEqual([-27.5, expect.closeTo(-1.44121, 5)]);
    expect(crownPlace(-27.5, 3, -0.4, 0, 3)[1]).toBeCloseTo(y - 0.4, 12);
  });

  test.each(['right', 'left'])(
    '%s-handed, tilted: in the middle plane of the drawn slot at that height',
    (hand) => {
      const drawn = curves({ 'guitar.hand': hand, 'saddle.tilt': 8, 'saddle.angle': 3 });
      const { slot, profile } = drawn;
      const degrees = (slot.angle * 180) / Math.PI;
      for (const over of [-0.5, 0, 2.1, 3.4]) {
        const [x, y] = crownPlace(20, degrees, 0, 8, over);
        // the place of the slot's frame with v = 0 at that height, and at that x
        const w = over / Math.cos(slot.tilt);
        const u = (20 - slotToPart(slot, profile.thickness, 0, 0, w)[0]) / Math.cos(slot.angle);
        const there = slotToPart(slot, profile.thickness, u, 0, w);
        expect(there[2] - profile.thickness).toBeCloseTo(over, 9);
        expect(x).toBeCloseTo(there[0], 9);
        expect(y, `${over} mm over the top`).toBeCloseTo(there[1], 9);
      }
    },
  );

  test('the other hand is the mirror image', () => {
    const [x, y] = crownPlace(-27.5, 3, -0.2, 5, 3);
    expect(crownPlace(27.5, -3, -0.2, 5, 3)).toEqual([-x, expect.closeTo(y, 12)]);
  });
});
