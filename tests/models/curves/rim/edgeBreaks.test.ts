import { expect, test } from 'vitest';
import { edgeBreaks } from '../../../../models/curves/rim/edgeBreaks.ts';
import { planOf } from '../../../../models/curves/rim/plan.ts';
import { arc, line, type Point } from '../../../../models/curves/segment.ts';

const degrees = Math.PI / 180;
const R = 16;
const on = (angle: number): Point => [R * Math.cos(angle), R * Math.sin(angle)];
const [low, high] = [on(-20 * degrees), on(20 * degrees)];
/** A segment of a circle: an arc that faces +X at its middle, and its chord. */
const plan = planOf([arc(low, high, [0, 0], 1), line(high, low)]);
const arcLength = 40 * degrees * R;

test('an arc that turns back beyond a joint passes it twice', () => {
  const found = edgeBreaks(plan, 0, [15.5]);
  const half = Math.acos(15.5 / R) * R;
  const wanted = [0, arcLength / 2 - half, arcLength / 2 + half, arcLength, plan.length];
  expect(found).toHaveLength(wanted.length);
  found.forEach((s, i) => {
    expect(s, `break ${i}`).toBeCloseTo(wanted[i] as number, 8);
  });
});

test('a curve that runs inside passes where it lies itself', () => {
  const found = edgeBreaks(plan, 2, [13.5]);
  const half = Math.acos(13.5 / (R - 2)) * R;
  expect(found[1]).toBeCloseTo(arcLength / 2 - half, 8);
  expect(found[2]).toBeCloseTo(arcLength / 2 + half, 8);
  expect(found).toHaveLength(5);
});

test('a joint out of the arc’s reach is not passed', () => {
  expect(edgeBreaks(plan, 0, [16.001, 2])).toHaveLength(3);
});
