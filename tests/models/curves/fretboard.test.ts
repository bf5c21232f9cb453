import { describe, expect, test } from 'vitest';
import { fretboardRadius, fretPlace } from '../../../models/curves/fretboard.ts';
import { design } from '../../support/change.ts';

describe('the fret rule S(1 − 2^(−n/12))', () => {
  // equal temperament; values for S = 645.16 mm derived by two independent programs
  test.each([
    [1, 36.21],
    [5, 161.8361],
    [12, 322.58],
    [14, 357.7739],
    [20, 441.9473],
  ])('fret %d lies at %d mm', (fret, place) => {
    expect(Math.abs(fretPlace(645.16, fret) - place)).toBeLessThan(1e-4);
  });
});

describe('a cone’s radius R(y) = R0 + (R1 − R0)·y/y1', () => {
  const { guitar } = design({
    'guitar.scale': 645.16,
    'guitar.fretboard': 'conical',
    'guitar.fretboardRadius': '12 in',
    'guitar.fretboardRadiusAtFret': '16 in',
    'guitar.fretboardFret': 20,
  });

  test('12 in to 16 in at fret 20 is 17.83925 in over a saddle at 645.16 mm (derived)', () => {
    expect(fretboardRadius(guitar, 645.16) / 25.4).toBeCloseTo(17.83925, 5);
  });

  test('it is the measured radius at the nut and at the fret', () => {
    expect(fretboardRadius(guitar, 0)).toBeCloseTo(304.8, 9);
    expect(fretboardRadius(guitar, fretPlace(645.16, 20))).toBeCloseTo(406.4, 9);
  });

  test('a fretboard of one radius keeps it', () => {
    expect(fretboardRadius({ ...guitar, fretboard: 'constant' }, 645.16)).toBe(guitar.fretboardRadius);
  });
});
