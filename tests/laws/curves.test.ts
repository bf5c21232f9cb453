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
import { boundaryDesigns } from '../support/boundaryDesigns.ts';
import { acceptedDesigns } from '../support/designs.ts';

/*
 * What must be true of every design that validation accepts: the curves are sound, and no cut meets another or leaves
 * the wood. Random designs, and designs at the very edge of what is accepted. Looked at by brute force, point by point, not by the sums that validation itself does.
 */
const SEED = 2211;
const accepted = [...acceptedDesigns(120, SEED).accepted, ...boundaryDesigns(80, SEED)];

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

/** How far two pieces that follow one another are from running on: the gap, and the sine of the corner between them. */
function jolt(before: Segment, after: Segment): number {
  const [u, v] = [directionAt(before, 1), directionAt(after, 0)];
  if (u[0] * v[0] + u[1] * v[1] < 0) return 1;
  return Math.max(distance(before.to, after.from), Math.abs(u[0] * v[1] - u[1] * v[0]));
}

/** The least of many numbers: one expectation a design, since each costs more than what it looks at. */
function least(numbers: Iterable<number>): number {
  let found = Number.POSITIVE_INFINITY;
  for (const n of numbers) if (!(n >= found)) found = n;
  return found;
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
      const jolts = outline.map((s, i) => -jolt(s, outline[(i + 1) % outline.length] as Segment));
      expect(least(jolts)).toBeGreaterThan(-1e-6);
      expect(least(outline.map(lengthOf))).toBeGreaterThanOrEqual(LEAST_PIECE - 1e-9);
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
      const away = polygon(outline, 0.2).map(([x, y]) => -distanceTo(outline, [-x, y]));
      expect(least(away)).toBeGreaterThan(-1e-6);
    });
  });
});

describe('the top', () => {
  test('runs on without a corner, always toward +x, in pieces long enough to cut', () => {
    everyDesign((_design, { profile: { chain } }) => {
      expect(least(chain.slice(1).map((s, i) => -jolt(chain[i] as Segment, s)))).toBeGreaterThan(-1e-6);
      expect(least(chain.map((s) => s.to[0] - s.from[0]))).toBeGreaterThan(0);
      expect(least(chain.map(lengthOf))).toBeGreaterThanOrEqual(LEAST_PIECE);
    });
  });

  test('stands over the glue face everywhere, by the edge and half a millimetre', () => {
    everyDesign((design, { outline, profile, underside }) => {
      const thick = ([x, y]: Point) => topHeight(profile, x) - undersideHeight(underside, x, y);
      const half = design.footprint.length / 2;
      const middle = Array.from({ length: 400 }, (_, i): Point => [(half * i) / 399, 0]);
      expect(least([...middle, ...polygon(outline, 0.2)].map(thick))).toBeGreaterThan(
        0.5 + edgeSize(design) - 1e-6,
      );
    });
  });
});

/** Points on the walls of a slot, from the crown's level to the floor, in the part. */
function walls({ slot, profile }: Curves, step: number): readonly (readonly [number, number, number])[] {
  return alongPlan(slot.plan, step).flatMap(([u, v]) =>
    [0, 0.5, 1].map((down) => slotToPart(slot, profile.thickness, u, v, down * slotFloor(slot, u))),
  );
}

describe('no cut meets another or leaves the wood', () => {
  test('the slot keeps its distance from every edge', () => {
    everyDesign((design, curves) => {
      const rims = walls(curves, 1).map(([x, y]) => {
        const away = distanceTo(curves.outline, [x, y]);
        return isInside(curves.outline, [x, y]) ? away : -away;
      });
      expect(least(rims)).toBeGreaterThan(edgeSize(design) + 0.5 - 0.05);
    });
  });

  test('the slot has wood under it, and a round end stays under the crown', () => {
    everyDesign((_design, { profile, slot, underside }) => {
      const floor = alongPlan(slot.plan, 0.5).map(([u, v]) =>
        slotToPart(slot, profile.thickness, u, v, slotFloor(slot, u)),
      );
      const inWood = floor.filter(([x, , z]) => topHeight(profile, x) >= z);
      expect(least(inWood.map(([x, y, z]) => z - undersideHeight(underside, x, y)))).toBeGreaterThan(0.48);
      if (!slot.roundEnds) return;
      expect(least(floor.map(([x]) => profile.crownEnd - Math.abs(x)))).toBeGreaterThan(0);
      expect(least(floor.map(([x, , z]) => topHeight(profile, x) - z))).toBeGreaterThan(0.2);
    });
  });

  test('a slot with open ends has come out of the wood where it ends', () => {
    everyDesign((_design, { profile, slot }) => {
      if (slot.roundEnds) return;
      const over = [-1, 1].flatMap((end) =>
        [-1, -0.5, 0, 0.5, 1].map((across) => {
          const [u, v] = [end * slot.halfLength, (across * slot.width) / 2];
          const [x, , z] = slotToPart(slot, profile.thickness, u, v, slotFloor(slot, u));
          return z - topHeight(profile, x);
        }),
      );
      expect(least(over)).toBeGreaterThan(0.09);
    });
  });

  test('holes keep away from edges, each other and the ends of the block', () => {
    everyDesign((design, { outline, pins, profile }) => {
      const rims = pins.map(({ at, reach }) =>
        isInside(outline, at) ? distanceTo(outline, at) - reach : -1,
      );
      expect(least(rims)).toBeGreaterThan(edgeSize(design) + 0.5 - 1e-6);
      expect(least(pins.map((p) => profile.crownEnd - Math.abs(p.at[0]) - p.reach))).toBeGreaterThan(-1e-6);
      const between = pins.flatMap((p, i) =>
        pins.slice(i + 1).map((q) => distance(p.at, q.at) - p.reach - q.reach),
      );
      expect(least(between)).toBeGreaterThan(0.3 - 1e-6);
    });
  });

  test('holes keep away from the slot, and none lies inside it', () => {
    everyDesign((_design, curves) => {
      const { pins, slot } = curves;
      const wall = walls(curves, 1);
      const wood = pins.map(({ at, reach }) => least(wall.map(([x, y]) => distance(at, [x, y]) - reach)));
      expect(least(wood)).toBeGreaterThan(0.5 - 0.05);
      const within = pins.some(({ at }) => {
        const u = at[0] * Math.cos(slot.angle) + at[1] * Math.sin(slot.angle);
        const v = -at[0] * Math.sin(slot.angle) + at[1] * Math.cos(slot.angle);
        return Math.abs(v) < slot.width / 2 && Math.abs(u) < slot.halfLength;
      });
      expect(within).toBe(false);
    });
  });

  test('channels cut no other hole, no other channel, no slot, and come out on the crown', () => {
    everyDesign((_design, curves) => {
      const { channels, pins, profile } = curves;
      const wall = walls(curves, 2);
      const cuts = channels.map(({ at, direction: [dx, dy], width, ends }) =>
        Array.from({ length: 13 }, (_, k) => (ends * k) / 12).flatMap((s) =>
          [-width / 2, 0, width / 2].map(
            (aside): Point => [at[0] + s * dx - aside * dy, at[1] + s * dy + aside * dx],
          ),
        ),
      );
      for (const [i, cut] of cuts.entries()) {
        const others = cuts.slice(i + 1).flat();
        const holes = pins.filter((_, j) => j !== i);
        expect(least(cut.map(([x]) => profile.crownEnd - Math.abs(x)))).toBeGreaterThanOrEqual(0);
        expect(least(cut.flatMap((p) => holes.map((q) => distance(p, q.at) - q.reach)))).toBeGreaterThan(
          0.29,
        );
        expect(least(cut.flatMap((p) => others.map((q) => distance(p, q))))).toBeGreaterThan(0.29);
        expect(least(cut.flatMap((p) => wall.map(([x, y]) => distance(p, [x, y]))))).toBeGreaterThan(0.45);
      }
    });
  });

  test('hole outlines rise, are never narrower than the drill, and clear the wood at both ends', () => {
    everyDesign((design, { pins, underside }) => {
      for (const pin of pins) {
        for (const outline of Object.values(pin.outline)) {
          const heights = outline.map(([, z]) => z);
          expect(heights).toEqual([...heights].sort((a, b) => a - b));
          expect(least(outline.slice(1, -1).map(([r]) => r))).toBeGreaterThanOrEqual(
            design.pins.drill / 2 - 1e-9,
          );
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
