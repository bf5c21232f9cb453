import { expect, test } from 'vitest';
import {
  distanceBetween,
  distanceToSides,
  gapBetween,
  gapToCircle,
  isWithin,
  type Polygon,
} from '../../../models/curves/polygons.ts';

const square: Polygon = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
const moved = (dx: number, dy: number): Polygon => square.map(([x, y]) => [x + dx, y + dy] as const);
/** A bar that lies across the square with all its corners outside. */
const bar: Polygon = [
  [-5, 4],
  [15, 4],
  [15, 6],
  [-5, 6],
];

test('distance to the sides, from inside and outside', () => {
  expect(distanceToSides(square, [4, 5])).toBe(4);
  expect(distanceToSides(square, [13, 14])).toBe(5);
  expect(distanceToSides(square, [5, 0])).toBe(0);
});

test('within', () => {
  expect(isWithin(square, [4, 5])).toBe(true);
  expect(isWithin(square, [-1, 0])).toBe(false);
  expect(isWithin(square, [11, 10])).toBe(false);
});

test('the gap is the least distance, between sides or corners', () => {
  expect(gapBetween(square, moved(12, 3))).toBe(2);
  expect(gapBetween(square, moved(13, 14))).toBe(5);
  expect(distanceBetween(square, moved(12, 3))).toBe(2);
});

test('there is no gap where they overlap, lie in each other, or cross with no corner inside', () => {
  expect(gapBetween(square, moved(5, 5))).toBe(0);
  expect(
    gapBetween(square, [
      [4, 4],
      [6, 4],
      [5, 6],
    ]),
  ).toBe(0);
  expect(
    gapBetween(
      [
        [4, 4],
        [6, 4],
        [5, 6],
      ],
      square,
    ),
  ).toBe(0);
  expect(gapBetween(square, bar)).toBe(0);
});

test('a circle whose centre is inside has no gap at all, however far from the sides', () => {
  expect(gapToCircle(square, [14, 5], 1.5)).toBe(2.5);
  expect(gapToCircle(square, [11, 5], 1.5)).toBe(-0.5);
  expect(gapToCircle(square, [5, 5], 1.5)).toBe(-1.5);
});
