import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { slotWalls } from '../../src/trade/slotWalls.ts';

describe('B7: a saddle held by its slot’s walls', () => {
  test('H 40, e 4, d 9: 57.778 in front, 17.778 behind (derived)', () => {
    const walls = slotWalls(40, 4, 9);
    expect(walls.front).toBeCloseTo(57.778, 3);
    expect(walls.back).toBeCloseTo(17.778, 3);
    expect(walls.tips).toBe('forward');
  });

  test('tipped back, mouth and foot change places', () => {
    const walls = slotWalls(-40, 4, 9);
    expect(walls.front).toBeCloseTo(17.778, 3);
    expect(walls.back).toBeCloseTo(57.778, 3);
    expect(walls.tips).toBe('back');
  });

  test('forces and moments balance, whichever way it tips', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(-60, 60), number(0, 10), number(1, 12), (square, e, d) => {
        const { front, back, tips } = slotWalls(square, e, d);
        expect(square - front + back, 'forces toward the nut').toBeCloseTo(0, 9);
        // about the slot's floor: the wall toward which it tips bears at d
        const atMouth = tips === 'forward' ? -front : back;
        expect(square * (e + d) + atMouth * d, 'moments about the floor').toBeCloseTo(0, 8);
        expect(Math.min(front, back), 'walls only push').toBeGreaterThanOrEqual(0);
      }),
      { seed: 402, numRuns: 300 },
    );
  });

  test('a saddle that isn’t in its slot, or doesn’t show, is refused', () => {
    expect(() => slotWalls(40, 4, 0)).toThrow(RangeError);
    expect(() => slotWalls(40, -0.1, 9)).toThrow(/shows/);
  });
});
