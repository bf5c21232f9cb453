import { Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { axesOf, FIRST_VIEW, SET_VIEWS } from '../../../src/app/viewport/pose.ts';
import {
  AXES,
  facing,
  kept,
  planeOf,
  reachOf,
  sectionAcross,
  towardCut,
  within,
} from '../../../src/app/viewport/section.ts';

const BOX = [-77, -17, -0.4, 77, 19, 9.6] as const;
const EYES = { ...SET_VIEWS, first: FIRST_VIEW, aslant: { azimuth: 140, elevation: -20 } };

describe.each(Object.entries(EYES))('an eye %s', (_, eye) => {
  test.each(AXES)('sees the face of a new cut across %s, slantwise at least, once turned to it', (axis) => {
    const section = sectionAcross(axis, BOX, eye, {});
    const { min, max } = reachOf(BOX, axis);
    expect(section.at).toBeCloseTo((min + max) / 2, 0);
    const outward = planeOf(section).normal.negate();
    const from = towardCut(section, eye) ?? eye;
    expect(outward.dot(new Vector3(...axesOf(from).back))).toBeGreaterThan(0.45);
  });
});

test('an eye that sees the cut well is left alone', () => {
  expect(towardCut({ axis: 'y', at: 0, keep: 1 }, FIRST_VIEW)).toBeUndefined();
});

test('facing looks along the cut’s normal', () => {
  for (const axis of AXES) {
    for (const keep of [1, -1] as const) {
      const back = new Vector3(...axesOf(facing({ axis, at: 0, keep })).back);
      expect(back[axis], `${axis}, keeping ${keep}`).toBeCloseTo(-keep, 9);
    }
  }
});

test('the kept side is the plane’s positive side', () => {
  const plane = planeOf({ axis: 'y', at: 4, keep: -1 });
  expect(plane.distanceToPoint(new Vector3(9, 3, 0))).toBeCloseTo(1, 12);
  expect(plane.distanceToPoint(new Vector3(9, 5, 0))).toBeCloseTo(-1, 12);
});

test('what is kept reaches from the cut to the box’s end', () => {
  const points = new Float32Array([-77, -17, 0, 77, 19, 9]);
  const left = kept(points, BOX, { axis: 'x', at: 20, keep: 1 });
  const xs = left.filter((_, i) => i % 3 === 0);
  expect([Math.min(...xs), Math.max(...xs)]).toEqual([20, 77]);
  expect(kept(points, BOX, undefined)).toBe(points);
});

test('a cut outside of the part moves to its end', () => {
  expect(within({ axis: 'z', at: 12, keep: 1 }, BOX).at).toBe(9.6);
  expect(within({ axis: 'x', at: -80, keep: 1 }, BOX).at).toBe(-77);
});

test('a cut lies where it shows most, where that is known and within the part', () => {
  expect(sectionAcross('x', BOX, FIRST_VIEW, { x: 5.7 }).at).toBe(5.7);
  expect(sectionAcross('y', BOX, FIRST_VIEW, { y: -30 }).at).toBe(-17);
  expect(sectionAcross('z', BOX, FIRST_VIEW, { x: 5.7 }).at).toBeCloseTo(4.6, 9);
});
