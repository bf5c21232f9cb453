import { describe, expect, test } from 'vitest';
import { straightedgeGap } from '../../src/trade/straightedgeGap.ts';

describe('a straightedge on the frets, over the bridge', () => {
  test('p 9.858 over a 9.5 bridge leaves 0.358 at its slot (derived)', () => {
    expect(straightedgeGap(9.858, 0.5, 0, 9.5)).toBeCloseTo(0.358, 9);
  });

  test('by coordinates: over the front edge the frets’ plane is as much lower as it rises from there', () => {
    const [y, angle] = [11, 1.5];
    const gap = straightedgeGap(9.858, angle, y, 9.5);
    // up from the front edge along the plane to the slot
    const along = y / Math.cos((angle * Math.PI) / 180);
    expect(9.5 + gap + along * Math.sin((angle * Math.PI) / 180)).toBeCloseTo(9.858, 9);
  });

  test('a bridge taller than the frets’ plane would be met by the straightedge', () => {
    expect(straightedgeGap(9.858, 0.5, 0, 10.2)).toBeCloseTo(-0.342, 9);
  });
});
