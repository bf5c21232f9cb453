import { describe, expect, test } from 'vitest';
import { arc, distance, line, nearestOn } from '../../../models/curves/segment.ts';
import { tipRound } from '../../../models/curves/tipRound.ts';

describe('the round between two straight edges', () => {
  test('parallel edges 24 apart: a half circle of 12 (derived)', () => {
    const tip = tipRound([line([0, -10], [80, -10])], [line([0, 14], [80, 14])], 80);
    expect(tip?.radius).toBeCloseTo(12, 9);
    expect(tip?.centre[0]).toBeCloseTo(68, 9);
    expect(tip?.centre[1]).toBeCloseTo(2, 9);
    expect(tip?.touchBack[0]).toBeCloseTo(68, 6);
  });

  test('edges that close toward the tip: the circle in the wedge that ends at the length (derived)', () => {
    // edges from (0, ±20) to (80, ±8): distance from (80 − r, 0) to an edge is r
    const tip = tipRound([line([0, -20], [80, -8])], [line([0, 20], [80, 8])], 80);
    const slope = 12 / 80;
    const radius = (20 - 80 * slope) / (Math.hypot(1, slope) - slope);
    expect(tip?.radius).toBeCloseTo(radius, 9);
  });
});

test('touches arcs too, and reaches exactly the length', () => {
  const back = [arc([0, -24], [80, -14], [0, (80 * 80 + 100) / 20 - 24], 1)];
  const front = [line([0, 12], [80, 12])];
  const tip = tipRound(back, front, 80);
  expect(tip).toBeDefined();
  if (!tip) return;
  expect(tip.centre[0] + tip.radius).toBeCloseTo(80, 9);
  for (const edge of [back[0], front[0]]) {
    if (edge) expect(nearestOn(edge, tip.centre).distance).toBeCloseTo(tip.radius, 7);
  }
  expect(distance(tip.centre, tip.touchBack)).toBeCloseTo(tip.radius, 7);
});

test('there is none where the last piece is shorter than the round', () => {
  const back = [line([0, -20], [70, -10]), line([70, -10], [80, -10])];
  expect(tipRound(back, [line([0, 14], [80, 14])], 80)).toBeUndefined();
  expect(tipRound([], [], 80)).toBeUndefined();
});
