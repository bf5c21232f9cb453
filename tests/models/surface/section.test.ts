import { describe, expect, test } from 'vitest';
import type { Curves } from '../../../models/curves/curves.ts';
import { type SectionPlane, section, signedArea } from '../../../models/surface/section.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { hole, rounded, slab, slotOf } from './slab.ts';

const cut = (curves: Curves, plane: SectionPlane, deviation = 0.001) =>
  section(surfaceOf(curves, 'reamed'), plane, deviation);

// Areas of elementary plane figures: derived.
describe('sections of a block', () => {
  test('square to x and y: rectangles with four corners', () => {
    const block = slab(100, 30, 9);
    for (const [plane, area] of [
      [{ across: 'x', at: 13 }, 30 * 9],
      [{ across: 'y', at: -3.3 }, 100 * 9],
      [{ across: 'z', at: 4 }, 100 * 30],
    ] as const) {
      const found = cut(block, plane);
      expect(found.pieces, `pieces ${JSON.stringify(plane)}`).toHaveLength(1);
      expect(found.pieces[0]?.outer, `corners ${JSON.stringify(plane)}`).toHaveLength(4);
      expect(found.areaMm2, `area ${JSON.stringify(plane)}`).toBeCloseTo(area, 2);
    }
  });

  test('beside the wood there is none', () => {
    const block = slab(100, 30, 9);
    for (const plane of [
      { across: 'x', at: 51 },
      { across: 'y', at: -16 },
      { across: 'z', at: 9.1 },
    ] as const) {
      expect(cut(block, plane)).toEqual({ pieces: [], areaMm2: 0 });
    }
  });

  test('through two points: the diagonal', () => {
    const found = cut(slab(40, 30, 9), { across: 'plan', from: [-20, -15], to: [20, 15] });
    expect(found.areaMm2).toBeCloseTo(50 * 9, 2);
    const ways = (found.pieces[0]?.outer ?? []).map((p) => p[0]);
    expect(Math.min(...ways), 'counted from the first point').toBeCloseTo(0, 4);
    expect(Math.max(...ways)).toBeCloseTo(50, 4);
  });

  test('two points that are one make no plane', () => {
    expect(() => cut(slab(40, 30, 9), { across: 'plan', from: [1, 2], to: [1, 2] })).toThrow(RangeError);
  });

  test('a slot’s stadium is a hole in a level section above its floor, none below', () => {
    const block = slab(100, 30, 9, { slot: slotOf(3, 70, 5.5, { angle: 0.05 }) });
    const stadium = 67 * 3 + (Math.PI * 9) / 4;
    const above = cut(block, { across: 'z', at: 6 });
    expect(above.pieces).toHaveLength(1);
    expect(above.pieces[0]?.holes).toHaveLength(1);
    expect(above.areaMm2).toBeCloseTo(3000 - stadium, 1);
    expect(cut(block, { across: 'z', at: 3 }).pieces[0]?.holes).toEqual([]);
  });

  test('a leaning slot: air with wood over it, in one piece with what is under it', () => {
    const tilt = (10 * Math.PI) / 180;
    const block = slab(100, 30, 9, { slot: slotOf(3, 70, 5.5, { tilt }) });
    // along x in front of the opening: the slot is a window in the wood
    const found = cut(block, { across: 'y', at: 2 });
    expect(found.pieces).toHaveLength(1);
    expect(found.pieces[0]?.holes, 'the slot under its overhanging wall').toHaveLength(1);
    // square to it: a parallelogram of the slot's own width times its depth
    expect(cut(block, { across: 'x', at: 0 }).areaMm2).toBeCloseTo(30 * 9 - 3 * 5.5, 2);
  });

  test('a hole in a level section is its circle at that height, and parts an upright one in two', () => {
    const block = slab(100, 30, 9, { pins: [hole([10, -5], 9, [2, -1], [3, 9], [3.1, 10])] });
    const level = cut(block, { across: 'z', at: 4 });
    expect(level.pieces[0]?.holes).toHaveLength(1);
    expect(level.areaMm2).toBeCloseTo(3000 - Math.PI * 2.5 ** 2, 1);
    const upright = cut(block, { across: 'x', at: 10 });
    expect(upright.pieces).toHaveLength(2);
    expect(upright.areaMm2).toBeCloseTo(30 * 9 - 9 * (2.1 + 3), 2);
  });

  test('a rounded edge shows its quarter circles', () => {
    const r = 2;
    const block = slab(0, 0, 9, { outline: rounded(100, 30, 8), edge: { kind: 'round', size: r } });
    expect(cut(block, { across: 'x', at: 5 }).areaMm2).toBeCloseTo(30 * 9 - 2 * (1 - Math.PI / 4) * r * r, 2);
  });
});

describe('sections of random designs', () => {
  const { accepted } = acceptedDesigns(6, 77);
  const planes = (curves: Curves): readonly SectionPlane[] => [
    { across: 'x', at: (curves.pins[0]?.at[0] ?? 0) + 0.3 },
    { across: 'y', at: 0.2 },
    { across: 'z', at: 0.6 * curves.profile.thickness },
    { across: 'plan', from: [-30, -1], to: [30, 1.5] },
  ];

  test('outer polygons go counter-clockwise, holes clockwise, and all enclose the area said', () => {
    for (const { curves } of accepted) {
      for (const plane of planes(curves)) {
        const { pieces, areaMm2 } = cut(curves, plane, 0.02);
        expect(pieces.length, JSON.stringify(plane)).toBeGreaterThan(0);
        let sum = 0;
        for (const { outer, holes } of pieces) {
          expect(signedArea(outer)).toBeGreaterThan(0);
          for (const h of holes) expect(signedArea(h)).toBeLessThan(0);
          sum += signedArea(outer) + holes.reduce((a, h) => a + signedArea(h), 0);
        }
        expect(sum).toBeCloseTo(areaMm2, 6);
      }
    }
  }, 60_000);

  test('sides stray no farther than asked: wood on their left, air on their right', () => {
    const deviation = 0.02;
    let looked = 0;
    for (const { curves } of accepted) {
      const wood = surfaceOf(curves, 'reamed');
      for (const plane of planes(curves)) {
        const holds = woodIn(wood.columns, plane);
        const { pieces } = section(wood, plane, deviation);
        for (const polygon of pieces.flatMap((p) => [p.outer, ...p.holes])) {
          polygon.forEach((a, i) => {
            const b = polygon[(i + 1) % polygon.length] ?? a;
            const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
            // beside a corner neither side is clear
            if (long < 0.4) return;
            const [nx, ny] = [-(b[1] - a[1]) / long, (b[0] - a[0]) / long];
            const [mx, my] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
            const off = 1.5 * deviation;
            const where = `${JSON.stringify(plane)} between ${a} and ${b}`;
            const [x, y] = [mx + off * nx, my + off * ny];
            // a face that all but lies in the plane may be that far off across it instead
            const grazes =
              plane.across === 'z' &&
              wood.columns(x, y).some((ends) => ends.some((z) => Math.abs(z - plane.at) < deviation));
            expect(grazes || holds(x, y), `wood left of ${where}`).toBe(true);
            expect(holds(mx - off * nx, my - off * ny), `air right of ${where}`).toBe(false);
            looked++;
          });
        }
      }
    }
    expect(looked, 'sides looked at').toBeGreaterThan(500);
  }, 60_000);
});

type Columns = ReturnType<typeof surfaceOf>['columns'];

/** Whether a place of the section, in its own coordinates, is in the wood. */
function woodIn(columns: Columns, plane: SectionPlane): (a: number, b: number) => boolean {
  const at = (x: number, y: number, z: number) => columns(x, y).some(([low, high]) => z >= low && z <= high);
  if (plane.across === 'x') return (y, z) => at(plane.at, y, z);
  if (plane.across === 'y') return (x, z) => at(x, plane.at, z);
  if (plane.across === 'z') return (x, y) => at(x, y, plane.at);
  const [dx, dy] = [plane.to[0] - plane.from[0], plane.to[1] - plane.from[1]];
  const long = Math.hypot(dx, dy);
  return (t, z) => at(plane.from[0] + (t * dx) / long, plane.from[1] + (t * dy) / long, z);
}
