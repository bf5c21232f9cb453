import { describe, expect, test } from 'vitest';
import type { Curves } from '../../../models/curves/curves.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { disc, hole, slab, slotOf } from './slab.ts';

// Heights worked out by hand on blocks: derived.

const degrees = Math.PI / 180;
const columns = (curves: Curves, x: number, y: number) => surfaceOf(curves, 'reamed').columns(x, y);
/** One stretch of wood from here to there. */
function expectOne(curves: Curves, x: number, y: number, from: number, to: number): void {
  const found = columns(curves, x, y);
  expect(found, `one stretch of wood over (${x}, ${y})`).toHaveLength(1);
  expect(found[0]?.[0], `lower end over (${x}, ${y})`).toBeCloseTo(from, 9);
  expect(found[0]?.[1], `upper end over (${x}, ${y})`).toBeCloseTo(to, 9);
}

describe('columns', () => {
  test('a block stands from the glue plane to its top, and nowhere else', () => {
    const block = slab(100, 30, 9);
    expectOne(block, 0, 0, 0, 9);
    expectOne(block, 49.999, -14.999, 0, 9);
    for (const [x, y] of [
      [50.001, 0],
      [0, 15.001],
      [-51, -16],
      [70, 0],
    ] as const) {
      expect(columns(block, x, y), `outside at (${x}, ${y})`).toEqual([]);
    }
  });

  test('a domed underside falls away by R − √(R² − c²), an arched one only along x', () => {
    const R = 7620;
    expectOne(
      slab(100, 30, 9, { underside: { shape: 'sphere', radius: R } }),
      30,
      10,
      Math.sqrt(R * R - 1000) - R,
      9,
    );
    expectOne(
      slab(100, 30, 9, { underside: { shape: 'cylinder', radius: R } }),
      30,
      10,
      Math.sqrt(R * R - 900) - R,
      9,
    );
  });

  test('an upright slot leaves its floor, and at its ends only what the round takes', () => {
    const block = slab(100, 30, 9, { slot: slotOf(3, 70, 5.5) });
    expectOne(block, 0, 0, 0, 3.5);
    expectOne(block, 20, 1.4999, 0, 3.5);
    expectOne(block, 20, 1.5001, 0, 9);
    expectOne(block, 34.99, 0, 0, 3.5);
    expectOne(block, 34.99, 0.5, 0, 9);
  });

  test('a slot turned by its angle lies along (cos, sin)', () => {
    const block = slab(100, 30, 9, { slot: slotOf(3, 70, 5.5, { angle: 3 * degrees }) });
    const [c, s] = [Math.cos(3 * degrees), Math.sin(3 * degrees)];
    expectOne(block, 30 * c - 1.49 * s, 30 * s + 1.49 * c, 0, 3.5);
    expectOne(block, 30 * c - 1.51 * s, 30 * s + 1.51 * c, 0, 9);
    expectOne(block, 30 * c, -30 * s, 0, 9);
  });

  test('a floor parallel to the crown falls with it along the slot', () => {
    const R = 406.4;
    const block = slab(100, 30, 9, { slot: slotOf(3, 70, 5.5, { floorRadius: R }) });
    expectOne(block, 30, 0, 0, 3.5 - (R - Math.sqrt(R * R - 900)));
  });

  test('a slot that leans back leaves wood standing over air in front, and its back wall cut away', () => {
    const tilt = 10 * degrees;
    const block = slab(100, 30, 9, { slot: slotOf(3, 70, 5.5, { tilt }) });
    const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
    const floor = (y: number) => 9 + (-5.5 + y * s) / c;
    const wall = (y: number, v: number) => 9 + (v - y * c) / s;
    // at y = 2 the front wall roofs the slot over, at y = −1.8 the back wall stands under the opening
    const over = columns(block, 0, 2);
    expect(over).toHaveLength(2);
    expect(over[0]?.[1]).toBeCloseTo(floor(2), 9);
    expect(over[1]?.[0]).toBeCloseTo(wall(2, 1.5), 9);
    expect(over[1]?.[1]).toBe(9);
    expectOne(block, 0, 0, 0, floor(0));
    expectOne(block, 0, -1, 0, wall(-1, -1.5));
    expectOne(block, 0, -1.6, 0, 9);
  });

  test('a tapered and bevelled hole goes through, and its walls stand where its outline says', () => {
    const pins = [hole([10, -5], 9, [2.4, -2], [2.4, 4], [2.8, 8], [4.3, 9.5])];
    const block = slab(100, 30, 9, { pins });
    expect(columns(block, 11, -5.5), 'in the drilled hole').toEqual([]);
    expectOne(block, 10 + 2.6, -5, 0, 6);
    expectOne(block, 10, -5 + 3.3, 0, 8.5);
    expectOne(block, 10, -5 + 3.85, 0, 9);
  });

  test('a channel is a ramp from its hole that comes out at its length', () => {
    const channels: Curves['channels'] = [
      {
        at: [0, -10],
        direction: [0.6, 0.8],
        width: 1.6,
        outline: [
          [0, 7],
          [10, 9.5],
          [10, 11],
          [0, 11],
        ],
        reach: 10,
        ends: 8,
      },
    ];
    const block = slab(100, 30, 9, { channels });
    const [x, y] = [0.6 * 4, -10 + 0.8 * 4];
    expectOne(block, x, y, 0, 8);
    expectOne(block, x - 0.8 * 0.79, y + 0.6 * 0.79, 0, 8);
    expectOne(block, x - 0.8 * 0.81, y + 0.6 * 0.81, 0, 9);
    expectOne(block, 0.6 * 8.1, -10 + 0.8 * 8.1, 0, 9);
  });
});

describe('the edge', () => {
  // their heights are tested with the edges themselves, in curves/rim
  test.each([
    ['round', 7 + Math.sqrt(2 ** 2 - 1.5 ** 2)],
    ['chamfer', 7.5],
  ] as const)('%s ends the wood over a place near the wall, and nowhere else', (kind, left) => {
    const block = slab(0, 0, 9, { outline: disc(20), edge: { kind, size: 2 } });
    expectOne(block, 0, 19.5, 0, left);
    expectOne(block, 0, 17.999, 0, 9);
    expectOne(block, 0, 0, 0, 9);
  });
});
