import { describe, expect, test } from 'vitest';
import { fretboardRadius } from '../../models/curves/fretboard.ts';
import { fretboardDrop } from '../../src/trade/fretboardDrop.ts';
import { design } from '../support/change.ts';

describe('the fretboard’s arc', () => {
  // 16 in; derived by two independent programs
  test.each([
    [27.5, 0.93149],
    [16.5, 0.33509],
    [5.5, 0.03722],
  ])('at %d mm from its middle', (x, drop) => {
    expect(Math.abs(fretboardDrop(406.4, x) - drop)).toBeLessThan(1e-5);
    expect(fretboardDrop(406.4, -x)).toBe(fretboardDrop(406.4, x));
  });

  test('the point lies on the circle', () => {
    for (const x of [0, 3, 27.5, 200]) expect(Math.hypot(x, 254 - fretboardDrop(254, x))).toBeCloseTo(254, 9);
  });

  test('on a cone it takes the cone’s radius over the saddle: 12 to 16 in at fret 20 is 17.83925 in (derived)', () => {
    const { guitar } = design({
      'guitar.scale': 645.16,
      'guitar.fretboard': 'conical',
      'guitar.fretboardRadius': '12 in',
      'guitar.fretboardRadiusAtFret': '16 in',
      'guitar.fretboardFret': 20,
    });
    const radius = 17.83925 * 25.4;
    const byCircle = radius - Math.sqrt(radius ** 2 - 27.5 ** 2);
    expect(fretboardDrop(fretboardRadius(guitar, 645.16), 27.5)).toBeCloseTo(byCircle, 6);
  });

  test.each([[20], [0], [-300], [Number.NaN]])('radius %d doesn’t reach the outer string', (radius) => {
    expect(() => fretboardDrop(radius, 27.5)).toThrow(RangeError);
  });
});
