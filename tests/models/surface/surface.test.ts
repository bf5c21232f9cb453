import { describe, expect, test } from 'vitest';
import type { Curves } from '../../../models/curves/curves.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { disc, hole, level, rounded, slab, slotOf } from './slab.ts';

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
  const size = 2;
  /** Height left `d` from a straight wall under a level top. */
  const left = {
    round: (d: number) => 9 - size + Math.sqrt(size ** 2 - (size - d) ** 2),
    chamfer: (d: number) => 9 - size + d,
  };

  test.each(['round', 'chamfer'] as const)('%s along straight walls and round a corner', (kind) => {
    const block = slab(100, 30, 9, { outline: rounded(100, 30, 8), edge: { kind, size } });
    for (const d of [0.01, 0.3, 1, 1.9]) {
      expectOne(block, 3, 15 - d, 0, left[kind](d));
      expectOne(block, 3, d - 15, 0, left[kind](d));
      expectOne(block, 50 - d, 2, 0, left[kind](d));
      expectOne(block, d - 50, 2, 0, left[kind](d));
      const [x, y] = [42 + (8 - d) * Math.cos(0.7), 7 + (8 - d) * Math.sin(0.7)];
      expectOne(block, x, y, 0, left[kind](d));
    }
    expectOne(block, 3, 15 - size - 0.001, 0, 9);
    expectOne(block, 3, 0, 0, 9);
  });

  test('round over a top that falls toward the tip: the ball touches where it is square to both', () => {
    const slope = 0.25;
    const steep = Math.hypot(1, slope);
    const profile = level(9, slope);
    const block = slab(40, 30, 9, { profile, edge: { kind: 'round', size }, outline: rounded(40, 30, 8) });
    // at the tip: centre 2 inside, and 2 square under the top
    const centre = 9 - slope * 18 - size * steep;
    for (const d of [0.1, 0.7, 1.4]) {
      expectOne(block, 20 - d, 0, 0, centre + Math.sqrt(size ** 2 - (size - d) ** 2));
    }
    const touch = 20 - size + (size * slope) / steep;
    expectOne(block, touch - 0.001, 0, 0, 9 - slope * (touch - 0.001));
    // along ±y: the section square to the edge is the plain round
    const d = 0.6;
    expectOne(block, 1, 15 - d, 0, 9 - slope - steep * (9 - left.round(d)));
  });

  test('chamfer at a tip whose top falls: from 2 along the top to 2 down the wall', () => {
    const slope = 0.25;
    const block = slab(40, 30, 9, {
      profile: level(9, slope),
      edge: { kind: 'chamfer', size },
      outline: rounded(40, 30, 8),
    });
    const onTop = size / Math.hypot(1, slope);
    const [z0, z1] = [9 - slope * 20 - size, 9 - slope * (20 - onTop)];
    for (const d of [0.2, 1, 1.8]) expectOne(block, 20 - d, 0, 0, z0 + ((z1 - z0) * d) / onTop);
    expectOne(block, 20 - onTop - 0.001, 0, 0, 9 - slope * (20 - onTop - 0.001));
  });

  test('on a round block it is the same all round', () => {
    const block = slab(0, 0, 9, { outline: disc(20), edge: { kind: 'round', size } });
    for (let i = 0; i < 12; i++) {
      const a = 0.1 + (i * Math.PI) / 6;
      expectOne(block, 19.5 * Math.cos(a), 19.5 * Math.sin(a), 0, left.round(0.5));
    }
  });
});
