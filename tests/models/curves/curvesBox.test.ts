import { expect, test } from 'vitest';
import { curvesBox } from '../../../models/curves/curvesBox.ts';
import { curves } from '../../support/change.ts';

test('the box of a plain rectangle on a flat board is its own size (derived)', () => {
  const plain = {
    'footprint.backEdge': 'straight',
    'footprint.tip': 'square',
    'guitar.soundboard': 'flat',
    'footprint.length': 150,
    'footprint.depthCentre': 34,
    'footprint.slotBehindFront': 11,
    'top.thickness': 9.2,
  };
  expect(curvesBox(curves(plain))).toEqual([-75, -23, 0, 75, 11, 9.2].map((v) => expect.closeTo(v, 6)));
});

test('a domed underside reaches down by the sagitta of its farthest corner (derived)', () => {
  const domed = {
    'footprint.backEdge': 'straight',
    'footprint.tip': 'square',
    'footprint.length': 150,
    'footprint.depthCentre': 34,
    'footprint.slotBehindFront': 11,
    'footprint.cornerBack': 1.3,
    'guitar.soundboardRadius': 5000,
  };
  const low = curvesBox(curves(domed))[2];
  const sag = (c: number) => -(5000 - Math.sqrt(5000 ** 2 - c * c));
  expect(low).toBeGreaterThan(sag(Math.hypot(75, 23)));
  expect(low).toBeLessThan(sag(Math.hypot(74, 22)));
});
