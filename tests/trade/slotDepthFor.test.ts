import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fretboardDrop } from '../../src/trade/fretboardDrop.ts';
import { isHeld, saddleStand } from '../../src/trade/saddleStand.ts';
import { slotDepthFor } from '../../src/trade/slotDepthFor.ts';

const PLACES = [27.5, 16.5, 5.5, -5.5, -16.5, -27.5];
const shallower = PLACES.map((x) => fretboardDrop(406.4, x));
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the slot’s depth by rule (common practice)', () => {
  test('3 mm showing everywhere under a flat floor: the crown’s drop at the outer strings comes on top', () => {
    const solved = slotDepthFor({
      showings: Array(6).fill(3),
      shallower,
      woodAtNoDepth: 9.5,
      wood: 2.5,
      held: 0.5,
      tilt: 0,
    });
    expect(solved.depth).toBeCloseTo(3.93149, 5);
    expect(solved.forWood).toBeCloseTo(7, 12);
    expect(solved.both).toBe(true);
  });

  test('a thin bridge under a high saddle: the wood is kept, and it says so', () => {
    const solved = slotDepthFor({
      showings: [4.5, 5],
      shallower: [0, 0],
      woodAtNoDepth: 7,
      wood: 2.5,
      held: 0.5,
      tilt: 0,
    });
    expect(solved).toEqual({ depth: 4.5, forHold: 5, forWood: 4.5, both: false });
  });

  test('a builder who wants 60 % held gets half as much again in as shows', () => {
    const needs = { showings: [3], shallower: [0.2], woodAtNoDepth: 12, wood: 2.5, tilt: 0 };
    expect(slotDepthFor({ ...needs, held: 0.6 }).depth).toBeCloseTo(3 * 1.5 + 0.2, 12);
    expect(slotDepthFor({ ...needs, held: 0.5 }).depth).toBeCloseTo(3.2, 12);
  });

  test('a bridge thinner than the wood wanted gets no slot', () => {
    const solved = slotDepthFor({
      showings: [3],
      shallower: [0],
      woodAtNoDepth: 2,
      wood: 2.5,
      held: 0.5,
      tilt: 0,
    });
    expect(solved).toMatchObject({ depth: 0, both: false });
    expect(solved.forWood).toBeLessThan(0);
  });

  test('whatever is solved: the wood is left; where both hold, half stands in the slot, and barely so somewhere', () => {
    const needs = fc.tuple(
      fc.array(mm(1, 6), { minLength: 6, maxLength: 6 }),
      mm(6, 12),
      mm(1, 4),
      mm(0, 12),
    );
    fc.assert(
      fc.property(needs, ([showings, t, wood, tilt]) => {
        const solved = slotDepthFor({ showings, shallower, woodAtNoDepth: t, wood, held: 0.5, tilt });
        const floor = t - solved.depth * Math.cos((tilt * Math.PI) / 180);
        expect(floor).toBeGreaterThanOrEqual(wood - 1e-9);
        const stands = showings.map((showing, i) => {
          const top = t - (shallower[i] ?? 0);
          return saddleStand(top + showing, top, floor, tilt);
        });
        expect(stands.every((stand) => isHeld(stand, 0.5))).toBe(solved.both);
        const least = Math.min(...stands.map(({ inSlot, showing }) => inSlot - showing));
        if (solved.both) expect(least).toBeCloseTo(0, 9);
        else expect(floor).toBeCloseTo(wood, 9);
      }),
      { seed: 308, numRuns: 300 },
    );
  });
});
