import { describe, expect, test } from 'vitest';
import type { Point } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { alongString } from '../../../src/app/fit/alongString.ts';
import { besides, stringRun } from '../../../src/app/fit/stringRun.ts';
import { fitOf, someFits } from './fitOf.ts';

/** Height of a line over s, (s, z) in rising s. */
function heightAt(line: readonly Point[], s: number): number {
  const i = line.findIndex((p) => p[0] >= s);
  const [a, b] = [line[Math.max(0, i - 1)] as Point, line[i] as Point];
  return b[0] === a[0] ? b[1] : a[1] + ((s - a[0]) * (b[1] - a[1])) / (b[0] - a[0]);
}

describe.each(Object.entries(someFits))('along the strings of %s', (_name, changes) => {
  const { curves, design, fit, report } = fitOf(changes);
  const cuts = fit.strings.map((_, i) => {
    const [crown, broken] = [report.crowns[i], report.breaks[i]];
    if (!crown || !broken) throw new Error('no string');
    return {
      cut: alongString(curves, crown, broken, i),
      crown,
      wood: broken.wood,
      stand: report.saddle.stands[i],
    };
  });

  test('the slot is as wide as it is, cut aslant, and as deep as the saddle stands in it', () => {
    for (const { cut, crown, stand } of cuts) {
      const [frontTop, frontFoot, backFoot, backTop] = cut.slot;
      const width = Math.hypot(backFoot[0] - frontFoot[0], backFoot[1] - frontFoot[1]);
      expect(width).toBeGreaterThan(design.saddle.slotWidth - 1e-9);
      expect(width).toBeLessThan(design.saddle.slotWidth * 1.2);
      expect(frontTop[0]).toBeLessThan(0);
      // a crown that leans back may overhang the slot's edge
      expect(backTop[0]).toBeGreaterThan(design.saddle.tilt > 0 ? -1 : 0);
      expect(frontTop[1]).toBeCloseTo(topHeight(curves.profile, crown.at[0]), 1);
      const deep = (frontTop[1] - frontFoot[1] + (backTop[1] - backFoot[1])) / 2;
      expect(deep / Math.cos(curves.slot.tilt)).toBeCloseTo(stand?.inSlot ?? 0, 1);
    }
  });

  test('the slot’s back edge is where the report’s wood behind it begins', () => {
    for (const { cut, wood } of cuts) {
      expect(Math.abs(Math.max(0, cut.slot[3][0]) - (wood[0]?.[0] ?? 0))).toBeLessThan(0.06);
      expect(cut.slot[3][1]).toBeCloseTo(wood[0]?.[1] ?? 0, 1);
    }
  });

  test('the string never goes through wood or saddle', () => {
    for (const { cut, wood } of cuts) {
      const string = cut.string.slice(0, -1);
      for (const [s, z] of wood) expect(heightAt(string, s)).toBeGreaterThan(z - 1e-9);
      for (const [s, z] of cut.saddle) expect(heightAt(string, s)).toBeGreaterThan(z - 1e-9);
    }
  });
});

test('a taut string takes the shortest way over what lies between', () => {
  expect(
    stringRun(5, [
      [2, 1],
      [4, 0],
    ]),
  ).toEqual([
    [0, 5],
    [4, 0],
  ]);
  expect(
    stringRun(5, [
      [2, 4],
      [3, 1],
      [4, 0],
    ]),
  ).toEqual([
    [0, 5],
    [2, 4],
    [4, 0],
  ]);
});

test('a line beside another keeps its distance, at corners too', () => {
  const moved = besides(
    [
      [0, 0],
      [10, 0],
      [10, -10],
    ],
    1,
  );
  expect(moved.map(([x, y]) => [x.toFixed(9), y.toFixed(9)])).toEqual(
    [
      [0, 1],
      [11, 1],
      [11, -10],
    ].map(([x, y]) => [x?.toFixed(9), y?.toFixed(9)]),
  );
});
