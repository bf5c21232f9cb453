import { describe, expect, test } from 'vitest';
import { woodInFront } from '../../../src/trade/fit/woodInFront.ts';
import { curves } from '../../support/change.ts';

const square = { 'saddle.angle': 0, 'footprint.frontEdge': 'straight', 'footprint.slotBehindFront': 11 };

describe('wood in front of the slot (plane geometry)', () => {
  test('a straight slot behind a straight edge: 11 less half the slot’s width', () => {
    const drawn = curves({ ...square, 'saddle.slotWidth': 3 });
    for (const u of [-27.5, 0, 16.5]) expect(woodInFront(drawn, u), `at ${u}`).toBeCloseTo(9.5, 9);
  });

  test('an angled slot comes nearer on the treble side, mirrored on a left-handed bridge', () => {
    const angled = { ...square, 'saddle.slotWidth': 3, 'saddle.angle': 3 };
    const lean = (3 * Math.PI) / 180;
    for (const u of [-27.5, 0, 27.5]) {
      const wood = 11 - u * Math.sin(lean) - 1.5 * Math.cos(lean);
      expect(woodInFront(curves(angled), u), `at ${u}`).toBeCloseTo(wood, 9);
      expect(woodInFront(curves({ ...angled, 'guitar.hand': 'left' }), -u), `left, at ${-u}`).toBeCloseTo(
        wood,
        9,
      );
    }
  });

  test('in a round end the wall comes back: at its very end there is none beside the middle', () => {
    const drawn = curves({ ...square, 'saddle.slotWidth': 3, 'saddle.slotLength': 70 });
    expect(woodInFront(drawn, 35 - 1.5)).toBeCloseTo(11 - 1.5, 9);
    expect(woodInFront(drawn, 35 - 1.5 + 0.9), '0.9 into a radius of 1.5: 1.2 beside').toBeCloseTo(
      11 - 1.2,
      9,
    );
    expect(woodInFront(drawn, 35)).toBeCloseTo(11, 9);
  });

  test('a slot that leans back comes nearer by depth × sin at its foot', () => {
    const drawn = curves({ ...square, 'saddle.slotWidth': 3, 'saddle.tilt': 8, 'saddle.depth': 5 });
    const tilt = (8 * Math.PI) / 180;
    expect(woodInFront(drawn, 0)).toBeCloseTo(11 - 1.5 * Math.cos(tilt) - 5 * Math.sin(tilt), 9);
  });

  test('behind an edge that swells toward the soundhole, more at the middle than at the ends', () => {
    const swells = curves({
      'saddle.angle': 0,
      'saddle.slotWidth': 3,
      'footprint.backEdge': 'straight',
      'footprint.frontEdge': 'soundhole',
    });
    expect(woodInFront(swells, 0)).toBeCloseTo(9.5, 9);
    for (const u of [-35, 35]) expect(woodInFront(swells, u), `at ${u}`).toBeLessThan(9.4);
  });
});
