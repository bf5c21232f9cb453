import { describe, expect, test } from 'vitest';
import { underside, undersideHeight } from '../../../models/curves/underside.ts';
import { design } from '../../support/change.ts';

describe('the glue face falls by the sagitta R − √(R² − c²/4)', () => {
  // derived by two independent programs, for a chord of 155 mm
  test.each([
    ['15 ft', 0.6569],
    ['25 ft', 0.39412],
    ['28 ft', 0.35189],
  ])('over 155 mm in a dish of %s by %d mm', (radius, sagitta) => {
    const face = underside(design({ 'underside.shape': 'sphere', 'underside.radius': radius }));
    expect(Math.abs(-undersideHeight(face, 77.5, 0) - sagitta)).toBeLessThan(1e-5);
    expect(Math.abs(-undersideHeight(face, 0, -77.5) - sagitta)).toBeLessThan(1e-5);
  });
});

test('every point of a dome lies on its sphere, every point of an arch on its cylinder (derived)', () => {
  for (const shape of ['sphere', 'cylinder'] as const) {
    for (const [x, y] of [
      [0, 0],
      [60, -25],
      [-115, 40],
    ] as const) {
      const z = undersideHeight({ shape, radius: 3000 }, x, y);
      const away = shape === 'sphere' ? Math.hypot(x, y, z + 3000) : Math.hypot(x, z + 3000);
      expect(away).toBeCloseTo(3000, 9);
    }
  }
});

describe('which face', () => {
  test('follows the soundboard unless set', () => {
    const guitar = { 'guitar.soundboard': 'cylinder', 'guitar.soundboardRadius': 6000 };
    expect(underside(design(guitar))).toEqual({ shape: 'cylinder', radius: 6000 });
    expect(underside(design({ ...guitar, 'guitar.soundboard': 'flat' }))).toEqual({ shape: 'flat' });
    const set = { ...guitar, 'underside.radius': 5000 };
    expect(underside(design({ ...set, 'underside.shape': 'sphere' }))).toEqual({
      shape: 'sphere',
      radius: 5000,
    });
    expect(underside(design({ ...set, 'underside.shape': 'flat' }))).toEqual({ shape: 'flat' });
  });
  test('a flat one is at zero everywhere', () => {
    expect(undersideHeight({ shape: 'flat' }, 90, -30)).toBe(0);
  });
});
