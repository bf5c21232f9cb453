import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isHeld, saddleStand } from '../../src/trade/saddleStand.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('how a saddle stands under one string', () => {
  test('height = showing + in slot, and half of it in the slot is enough (common practice)', () => {
    const stand = saddleStand(12.5, 9.5, 4, 0);
    expect(stand).toEqual({ showing: 3, inSlot: 5.5, height: 8.5 });
    expect(isHeld(saddleStand(13, 9.5, 6, 0), 0.5)).toBe(true);
    expect(isHeld(saddleStand(13.01, 9.5, 6, 0), 0.5)).toBe(false);
    // as 12.7 − 9.6 is not quite 9.6 − 6.5 to a computer
    expect(isHeld(saddleStand(12.7, 9.6, 6.5, 0), 0.5)).toBe(true);
    expect(isHeld(stand, 0.6), '5.5 of 8.5 is 65 %').toBe(true);
    expect(isHeld(stand, 0.7)).toBe(false);
    expect(isHeld(saddleStand(9, 9.5, 9.4, 0), 0.9), 'nothing shows').toBe(true);
  });

  test('by coordinates: a leaning saddle’s length between two heights, its share in the slot unchanged', () => {
    fc.assert(
      fc.property(mm(0, 12), mm(11, 14), mm(2, 7), (tilt, z, floor) => {
        const stand = saddleStand(z, 9.5, floor, tilt);
        const foot = [0, floor] as const;
        const head = [-(z - floor) * Math.tan((tilt * Math.PI) / 180), z] as const;
        expect(stand.height).toBeCloseTo(Math.hypot(head[0] - foot[0], head[1] - foot[1]), 9);
        expect(stand.inSlot / stand.height).toBeCloseTo((9.5 - floor) / (z - floor), 9);
      }),
      { seed: 307, numRuns: 200 },
    );
  });
});
