import { describe, expect, test } from 'vitest';
import { sagitta } from '../../src/trade/sagitta.ts';

describe('sagitta of a bridge’s length on a domed soundboard', () => {
  // s = R − √(R² − c²/4), chord 155 mm; derived by two independent programs
  test.each([
    ['15 ft', 15 * 304.8, 0.6569],
    ['25 ft', 25 * 304.8, 0.39412],
    ['28 ft', 28 * 304.8, 0.35189],
  ])('radius %s', (_, radius, height) => {
    expect(Math.abs(sagitta(radius, 155) - height)).toBeLessThan(1e-5);
  });

  test('by coordinates: the circle through chord’s ends and the arc’s middle has the radius', () => {
    for (const [radius, chord] of [
      [406.4, 82],
      [7620, 155],
      [50, 99],
    ] as const) {
      const s = sagitta(radius, chord);
      // a circle through three points by its area: R = abc/(4·area)
      const leg = Math.hypot(chord / 2, s);
      expect((leg * leg * chord) / (4 * ((chord * s) / 2)), `R ${radius}`).toBeCloseTo(radius, 6);
    }
  });

  test('a half circle is as high as its radius; a longer chord is refused', () => {
    expect(sagitta(40, 80)).toBeCloseTo(40, 12);
    expect(() => sagitta(40, 80.1)).toThrow(/40 mm doesn't reach 40\.05 mm/);
  });
});
