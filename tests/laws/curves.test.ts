import { describe, expect, test } from 'vitest';
import { distanceTo, enclosedArea, isInside, polygon } from '../../models/curves/chain.ts';
import type { Curves } from '../../models/curves/curves.ts';
import { drawCurves } from '../../models/curves/drawCurves.ts';
import { edgeSize } from '../../models/curves/edgeClearance.ts';
import {
  type Chain,
  directionAt,
  distance,
  LEAST_PIECE,
  lengthOf,
  type Point,
  type Segment,
} from '../../models/curves/segment.ts';
import { slotFloor, slotToPart } from '../../models/curves/slot.ts';
import { topHeight } from '../../models/curves/topHeight.ts';
import { undersideHeight } from '../../models/curves/underside.ts';
import type { Design } from '../../src/design/design.ts';
import { acceptedDesigns } from '../support/designs.ts';

/*
 * What must be true of every design that validation accepts: the curves are sound, and no cut meets another or leaves
 * the wood. Looked at by brute force, point by point, not by the sums that validation itself does.
 */
const SEED = 2211;
const { accepted } = acceptedDesigns(250, SEED);

/** Tries every design and says which one fails, so that it can be drawn again. */
function everyDesign(check: (design: Design, curves: Curves) => void): void {
  for (const [i, { design, curves }] of accepted.entries()) {
    try {
      check(design, curves);
    } catch (error) {
      throw new Error(`design ${i} of seed ${SEED}: ${JSON.stringify(design)}`, { cause: error });
    }
  }
}

function joins(before: Segment, after: Segment): void {
  expect(distance(before.to, after.from)).toBeLessThan(1e-9);
  const [u, v] = [directionAt(before, 1), directionAt(after, 0)];
  expect(Math.abs(u[0] * v[1] - u[1] * v[0])).toBeLessThan(1e-6);
  expect(u[0] * v[0] + u[1] * v[1]).toBeGreaterThan(0);
}

const everyNumber = (value: unknown): readonly number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value
      ? Object.values(value).flatMap(everyNumber)
      : [];

test('every number of every curve is finite', () => {
  everyDesign((_design, curves) => {
    expect(everyNumber(curves).every(Number.isFinite)).toBe(true);
  });
});

describe('the outline', () => {
  test('is closed, runs on without a corner, and has no piece too short to cut', () => {
    everyDesign((_design, { outline }) => {
      for (const [i, s] of outline.entries()) {
        joins(s, outline[(i + 1) % outline.length] as Segment);
        expect(lengthOf(s)).toBeGreaterThanOrEqual(LEAST_PIECE - 1e-9);
      }
      expect(enclosedArea(outline)).toBeGreaterThan(0);
    });
  });

  test('doesn’t cross itself', () => {
    everyDesign((_design, { outline }) => expect(crossesItself(polygon(outline, 0.1))).toBe(false));
  });

  test('has the length and the depth on the centre line that were asked for', () => {
    everyDesign(({ footprint: f }, { outline }) => {
      const xs = polygon(outline, 0.001).map(([x]) => x);
      expect(Math.abs(Math.max(...xs) - f.length / 2)).toBeLessThan(0.002);
      expect(Math.abs(Math.min(...xs) + f.length / 2)).toBeLessThan(0.002);
      expect(distanceTo(outline, [0, f.slotBehindFront])).toBeLessThan(1e-9);
      expect(distanceTo(outline, [0, f.slotBehindFront - f.depthCentre])).toBeLessThan(1e-9);
    });
  });

  test('is the same on both sides', () => {
    everyDesign((_design, { outline }) => {
      for (const [x, y] of polygon(outline, 0.2)) expect(distanceTo(outline, [-x, y])).toBeLessThan(1e-6);
    });
  });
});

describe('the top', () => {
  test('runs on without a corner, always toward +x, in pieces long enough to cut', () => {
    everyDesign((_design, { profile: { chain } }) => {
      for (const [i, s] of chain.entries()) {
        expect(s.to[0]).toBeGreaterThan(s.from[0]);
        expect(lengthOf(s)).toBeGreaterThanOrEqual(LEAST_PIECE);
        const next = chain[i + 1];
        if (next) joins(s, next);
      }
    });
  });

  test('stands over the glue face everywhere, by the edge and half a millimetre', () => {
    everyDesign((design, { outline, profile, underside }) => {
      const need = 0.5 + edgeSize(design) - 1e-6;
      for (let x = 0; x <= design.footprint.length / 2; x += 0.5) {
        expect(topHeight(profile, x) - undersideHeight(underside, x, 0)).toBeGreaterThan(need);
      }
      for (const [x, y] of polygon(outline, 0.2)) {
        expect(topHeight(profile, x) - undersideHeight(underside, x, y)).toBeGreaterThan(need);
      }
    });
  });
});

describe('no cut meets another or leaves the wood', () => {
  test('the slot keeps its distance from every edge and has wood under it', () => {
    everyDesign((design, { outline, profile, slot, underside }) => {
      const margin = edgeSize(design) + 0.5 - 0.05;
      for (const [u, v] of alongPlan(slot.plan, 0.5)) {
        for (const down of [0, 0.5, 1]) {
          const [x, y, z] = slotToPart(slot, profile.thickness, u, v, down * slotFloor(slot, u));
          expect(isInside(outline, [x, y])).toBe(true);
          expect(distanceTo(outline, [x, y])).toBeGreaterThan(margin);
          if (down === 1 && topHeight(profile, x) >= z) {
            expect(z - undersideHeight(underside, x, y)).toBeGreaterThan(0.5 - 0.02);
          }
        }
      }
    });
  });

  test('a slot with round ends stays under the crown; one with open ends comes out before the wings’ run', () => {
    everyDesign((_design, { profile, slot }) => {
      for (const [u, v] of alongPlan(slot.plan, 0.5)) {
        const [x, , z] = slotToPart(slot, profile.thickness, u, v, slotFloor(slot, u));
        if (slot.roundEnds) expect(Math.abs(x)).toBeLessThan(profile.crownEnd);
        if (slot.roundEnds) expect(topHeight(profile, x) - z).toBeGreaterThan(0.2);
        if (!slot.roundEnds && Math.abs(u) > slot.halfLength - 1e-6)
          expect(z).toBeGreaterThan(topHeight(profile, x));
      }
    });
  });

  test('holes keep away from edges, slot, each other and the ends of the block', () => {
    everyDesign((design, { outline, pins, profile, slot }) => {
      const rim = edgeSize(design) + 0.5 - 1e-6;
      for (const [i, pin] of pins.entries()) {
        expect(isInside(outline, pin.at)).toBe(true);
        expect(distanceTo(outline, pin.at) - pin.reach).toBeGreaterThan(rim);
        expect(Math.abs(pin.at[0]) + pin.reach).toBeLessThan(profile.crownEnd + 1e-6);
        for (const other of pins.slice(i + 1)) {
          expect(distance(pin.at, other.at) - pin.reach - other.reach).toBeGreaterThan(0.3 - 1e-6);
        }
        for (const [u, v] of alongPlan(slot.plan, 0.5)) {
          for (const down of [0, 0.5, 1]) {
            const [x, y] = slotToPart(slot, profile.thickness, u, v, down * slotFloor(slot, u));
            expect(distance(pin.at, [x, y]) - pin.reach).toBeGreaterThan(0.5 - 0.05);
          }
        }
      }
    });
  });

  test('no hole lies inside the slot', () => {
    everyDesign((_design, { pins, slot }) => {
      for (const { at } of pins) {
        const u = at[0] * Math.cos(slot.angle) + at[1] * Math.sin(slot.angle);
        const v = -at[0] * Math.sin(slot.angle) + at[1] * Math.cos(slot.angle);
        expect(Math.abs(v) < slot.width / 2 && Math.abs(u) < slot.halfLength).toBe(false);
      }
    });
  });

  test('channels cut no other hole, no other channel, no slot, and come out on the crown', () => {
    everyDesign((_design, { channels, pins, profile, slot }) => {
      const cuts = channels.map(({ at, direction: [dx, dy], width, ends }) => {
        const points: Point[] = [];
        for (let s = 0; s <= ends; s += 0.5) {
          for (const aside of [-width / 2, 0, width / 2])
            points.push([at[0] + s * dx - aside * dy, at[1] + s * dy + aside * dx]);
        }
        return points;
      });
      for (const [i, points] of cuts.entries()) {
        for (const p of points) {
          expect(Math.abs(p[0])).toBeLessThanOrEqual(profile.crownEnd);
          for (const [j, pin] of pins.entries())
            if (j !== i) expect(distance(p, pin.at)).toBeGreaterThan(pin.reach + 0.2);
          for (const other of cuts.slice(i + 1))
            for (const q of other) expect(distance(p, q)).toBeGreaterThan(0.2);
          for (const [u, v] of alongPlan(slot.plan, 1)) {
            const [x, y] = slotToPart(slot, profile.thickness, u, v, 0);
            expect(distance(p, [x, y])).toBeGreaterThan(0.4);
          }
        }
      }
    });
  });

  test('hole outlines rise, are never narrower than the drill, and clear the wood at both ends', () => {
    everyDesign((design, { pins, underside }) => {
      for (const pin of pins) {
        for (const outline of Object.values(pin.outline)) {
          const heights = outline.map(([, z]) => z);
          expect(heights).toEqual([...heights].sort((a, b) => a - b));
          for (const [r] of outline.slice(1, -1))
            expect(r).toBeGreaterThanOrEqual(design.pins.drill / 2 - 1e-9);
          expect(heights[0]).toBeLessThan(undersideHeight(underside, ...pin.at) - 1);
          expect(heights[heights.length - 1]).toBeGreaterThan(pin.top + 0.1);
        }
      }
    });
  });
});

test('the other hand is the mirror image of everything', () => {
  everyDesign((design, curves) => {
    const hand = design.guitar.hand === 'left' ? 'right' : 'left';
    const other = drawCurves({ ...design, guitar: { ...design.guitar, hand } });
    expect(other.outline).toEqual(curves.outline);
    expect(other.profile).toEqual(curves.profile);
    expect(other.slot.angle).toBeCloseTo(-curves.slot.angle, 12);
    for (const [i, pin] of other.pins.entries()) {
      const mine = curves.pins[i];
      if (!mine) throw new Error('a pin is missing');
      expect(distance(pin.at, [-mine.at[0], mine.at[1]])).toBeLessThan(1e-9);
      expect(pin.top).toBeCloseTo(mine.top, 9);
    }
    for (const [i, channel] of other.channels.entries()) {
      const mine = curves.channels[i];
      if (!mine) throw new Error('a channel is missing');
      expect(distance(channel.direction, [-mine.direction[0], mine.direction[1]])).toBeLessThan(1e-9);
      expect(channel.reach).toBeCloseTo(mine.reach, 6);
    }
  });
});

/** Points on the plan of a slot, no more than `step` mm apart. */
function alongPlan(plan: Chain, step: number): readonly Point[] {
  const corners = polygon(plan, 0.02);
  return corners.flatMap((p, i) => {
    const q = corners[(i + 1) % corners.length] as Point;
    const n = Math.ceil(distance(p, q) / step);
    return Array.from(
      { length: n },
      (_, k): Point => [p[0] + ((q[0] - p[0]) * k) / n, p[1] + ((q[1] - p[1]) * k) / n],
    );
  });
}

function crossesItself(corners: readonly Point[]): boolean {
  const n = corners.length;
  const side = (a: Point, b: Point, c: Point) =>
    (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      const [a, b, p, q] = [corners[i], corners[(i + 1) % n], corners[j], corners[(j + 1) % n]] as [
        Point,
        Point,
        Point,
        Point,
      ];
      if (side(a, b, p) * side(a, b, q) < 0 && side(p, q, a) * side(p, q, b) < 0) return true;
    }
  }
  return false;
}
