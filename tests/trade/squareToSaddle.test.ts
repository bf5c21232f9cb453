import fc from 'fast-check';
import { expect, test } from 'vitest';
import { slotToPart } from '../../models/curves/slot.ts';
import { squareToSaddle } from '../../src/trade/squareToSaddle.ts';

test('an upright saddle bears all of H, and nothing of V', () => {
  expect(squareToSaddle(50, 9, 0)).toBe(9);
});

test('by hand: 40 down, 10 forward on a saddle that leans back by 10°: 9.848 − 6.946 (derived)', () => {
  expect(squareToSaddle(40, 10, 10)).toBeCloseTo(9.84808 - 6.94593, 4);
});

test('by vectors: the load’s share along the drawn slot’s own direction from back wall to front', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(number(0, 150), number(-5, 50), number(0, 12), (down, forward, tilt) => {
      const frame = { angle: 0, tilt: (tilt * Math.PI) / 180, depth: 5, floorRadius: undefined };
      const [from, to] = [slotToPart(frame, 9, 0, 0, 0), slotToPart(frame, 9, 0, 1, 0)];
      const [y, z] = [to[1] - from[1], to[2] - from[2]];
      expect(squareToSaddle(down, forward, tilt)).toBeCloseTo(y * forward - z * down, 9);
    }),
    { seed: 401, numRuns: 200 },
  );
});
