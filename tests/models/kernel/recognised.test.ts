import { expect, test } from 'vitest';
import { recognised } from '../../../models/kernel/recognised.ts';
import { cross, dot, type Vector } from '../../../models/kernel/vectors.ts';

const paces = [
  (t: number) => t,
  (t: number) => (t * (1 + 2 * t)) / 3,
  (t: number) => Math.sin((t * Math.PI) / 2),
];

// two unit vectors square to each other, askew to every axis, and the one square to both
const AHEAD: Vector = [2 / 3, -1 / 3, 2 / 3];
const ASIDE: Vector = [1 / 3, -2 / 3, -2 / 3];
const UP = cross(AHEAD, ASIDE);
const CENTRE: Vector = [3, -2, 7];
const at = (a: number, b: number, c: number) =>
  CENTRE.map((v, i) => v + a * (AHEAD[i] ?? 0) + b * (ASIDE[i] ?? 0) + c * (UP[i] ?? 0)) as [
    number,
    number,
    number,
  ];
/** A circle about CENTRE and UP, from one angle to another. */
const round =
  (radius: number, from: number, to: number, pace = (t: number) => t, lift = (_: number) => 0) =>
  (t: number) => {
    const angle = from + pace(t) * (to - from);
    return at(radius * Math.cos(angle), radius * Math.sin(angle), lift(t));
  };

test.each(paces)('a straight is a line, however unevenly it is walked', (pace) => {
  const path = (t: number): Vector => [3 + 4 * pace(t), 1 - 7 * pace(t), 2 * pace(t)];
  expect(recognised(path)).toEqual({ kind: 'line', from: path(0), to: path(1) });
});

test('a straight that turns back on itself is neither', () => {
  expect(recognised((t) => [t + 2 * Math.sin(9 * t), 0, 0])).toBeUndefined();
});

test.each([
  [0.3, 0.3, 1.2],
  [20, 0.3, 1.2],
  [20, 1.2, -3],
  [20, 3, 3 + 1.9 * Math.PI],
  [7620, 1.5, 1.51],
])('a circle of R %d from %d to %d keeps its radius and axis', (radius, from, to) => {
  for (const pace of paces) {
    const found = recognised(round(radius, from, to, pace));
    if (found?.kind !== 'arc') throw new Error('it is taken for no arc');
    expect(Math.abs(found.radius / radius - 1)).toBeLessThan(1e-7);
    // counter-clockwise about its own axis
    expect(dot(found.axis, UP)).toBeCloseTo(Math.sign(to - from), 7);
    if (radius < 100)
      found.centre.forEach((c, i) => {
        expect(c).toBeCloseTo(CENTRE[i] as number, 7);
      });
  }
});

test('a sagitta of ten nanometres is a circle’s, not a line’s', () => {
  // s = c²/8R: a chord of 1 mm and R 12500 mm
  expect(recognised(round(12_500, 1, 1 + 1 / 12_500))?.kind).toBe('arc');
});

test('what strays by a millionth of a millimetre is neither', () => {
  expect(recognised((t) => [t, 1e-6 * Math.sin(5 * t), 0])).toBeUndefined();
  expect(recognised((t) => round(5 + 1e-6 * t * t * t, 0, 2)(t))).toBeUndefined();
  const lifted = (t: number) => 1e-6 * Math.sin(9 * t);
  expect(recognised(round(5, 0, 2, (t) => t, lifted)), 'out of its plane').toBeUndefined();
});

test('a point is neither', () => {
  expect(recognised(() => [1, 2, 3])).toBeUndefined();
});
