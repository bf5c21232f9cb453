import { beforeAll, describe, expect, test } from 'vitest';
import type { Curves } from '../../../models/curves/curves.ts';
import { slot } from '../../../models/curves/slot.ts';
import { createDrafter, type Drafter } from '../../../models/draft/draftMesh.ts';
import { design } from '../../support/change.ts';
import { disc, hole, level, slab } from '../surface/slab.ts';

let drafter: Drafter;
beforeAll(async () => {
  drafter = await createDrafter();
});

const cut = slot(design({ 'saddle.slotWidth': 3, 'saddle.slotLength': 30, 'saddle.depth': 5 }), level(9));
const rim = 2 * Math.PI * 25;
const stadium = 2 * 27 + 3 * Math.PI;
/** Length of the lines that a round block with a slot shows, mm. */
function shown(rest: Partial<Curves>): number {
  const { edges } = drafter.draft(
    slab(0, 0, 9, { outline: disc(25), slot: cut, ...rest }),
    'reamed',
    0.001,
  ).mesh;
  let sum = 0;
  for (let i = 0; i < edges.length; i += 6) {
    const d = [0, 1, 2].map((k) => (edges[i + 3 + k] as number) - (edges[i + k] as number));
    sum += Math.hypot(...d);
  }
  return sum;
}

describe('the lines that are drawn', () => {
  test('a square edge shows the rim above and below, and the slot’s mouth and floor', () => {
    expect(shown({}) / (2 * rim + 2 * stadium)).toBeCloseTo(1, 3);
  });

  test('a round-over is smooth: only the rim below is left', () => {
    expect(shown({ edge: { kind: 'round', size: 2 } }) / (rim + 2 * stadium)).toBeCloseTo(1, 3);
  });

  test('a chamfer shows both its sides', () => {
    const both = (2 * Math.PI * 23 + rim) / rim;
    expect(shown({ edge: { kind: 'chamfer', size: 2 } }) / ((1 + both) * rim + 2 * stadium)).toBeCloseTo(
      1,
      3,
    );
  });

  test('a bevelled hole shows three circles', () => {
    const pins = [hole([0, 12], 9, [2, -2], [2, 8], [3, 9], [4, 10])];
    expect(shown({ pins }) - shown({})).toBeCloseTo(2 * Math.PI * (2 + 2 + 3), 1);
  });

  test('a dome or a cylinder under it adds none', () => {
    for (const shape of ['sphere', 'cylinder'] as const)
      expect(shown({ underside: { shape, radius: 3000 } }) / (2 * rim + 2 * stadium)).toBeCloseTo(1, 3);
  });
});

test('vertices are shared within a face: smooth shading, and a mesh that is not three vertices a triangle', () => {
  const { positions, triangles } = drafter.draft(
    slab(0, 0, 9, { outline: disc(25), slot: cut }),
    'reamed',
  ).mesh;
  expect(positions.length / 3).toBeLessThan(1.2 * (triangles.length / 3));
});
