import { describe, expect, test } from 'vitest';
import { distanceTo } from '../../../models/curves/chain.ts';
import { arc, directionAt, distance, line, pointAt, type Segment } from '../../../models/curves/segment.ts';
import { heightOn, insetProfile, topHeight } from '../../../models/curves/topHeight.ts';
import { curves } from '../../support/change.ts';

describe('the height of a chain over x', () => {
  const chain = [line([-10, 0], [-3, 0]), arc([-3, 0], [3, 0], [0, -4], -1), arc([3, 0], [9, 0], [6, 4], 1)];
  test.each([
    [-20, 0],
    [-5, 0],
    [0, 1],
    [6, -1],
    [3, 0],
    [20, 0],
  ])('at %d is %d (circles of 5: derived)', (x, z) => {
    expect(heightOn(chain, x)).toBeCloseTo(z, 12);
  });
});

test('every point of a profile lies at its own height', () => {
  const { profile } = curves({ 'top.wing': 'hollow', 'top.wingRise': 2, 'top.blend': 15 });
  for (const s of profile.chain) {
    for (const t of [0, 0.2, 0.5, 0.9]) {
      const [x, z] = pointAt(s, t);
      expect(topHeight(profile, x)).toBeCloseTo(z, 9);
    }
  }
});

describe.each([0.3, 1, 2])('the profile moved %d mm into the wood', (depth) => {
  const { profile } = curves({ 'top.shoulder': 4 });
  const inset = insetProfile(profile, depth);

  test('runs everywhere at that distance from the top', () => {
    for (const s of inset) {
      for (const t of [0, 0.25, 0.5, 0.75, 1]) {
        expect(distanceTo(profile.chain, pointAt(s, t))).toBeCloseTo(depth, 8);
      }
    }
  });

  test('lies under it, and runs on without a corner', () => {
    inset.slice(1).forEach((s, i) => {
      const before = inset[i] as Segment;
      expect(distance(before.to, s.from)).toBeLessThan(1e-8);
      const [u, v] = [directionAt(before, 1), directionAt(s, 0)];
      expect(u[0] * v[1] - u[1] * v[0]).toBeCloseTo(0, 8);
    });
    for (let x = 0; x < 70; x += 3) expect(heightOn(inset, x)).toBeLessThan(topHeight(profile, x));
  });
});
