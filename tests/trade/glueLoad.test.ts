import { describe, expect, test } from 'vitest';
import { type GlueFace, glueLoad } from '../../src/trade/glueLoad.ts';

const rectangle = (length: number, width: number): GlueFace => ({
  areaMm2: length * width,
  secondMm4: (length * width ** 3) / 12,
  toBackMm: width / 2,
  toFrontMm: width / 2,
});

describe('B6: the glue under a bridge of 155 by 32 (derived)', () => {
  const load = glueLoad(711.6, 9.2508, rectangle(155, 32));

  test('mean shear .14347 MPa', () => {
    expect(load.shear).toBeCloseTo(0.14347, 5);
  });

  test('peel .3497 MPa, which is 6M/(b·w²), at the tail’s edge; as much pressure at the other', () => {
    expect(load.peel).toBeCloseTo(0.3497, 4);
    expect(load.peel).toBeCloseTo((6 * 9250.8) / (155 * 32 ** 2), 12);
    expect(load.press).toBeCloseTo(load.peel, 12);
  });
});

test('by adding up: the stresses over a trapezoid hold the couple and pull nowhere else', () => {
  // 150 long at the back, 100 at the front, 30 deep; its centroid and second moment in closed form
  const [a, b, h] = [150, 100, 30];
  const area = ((a + b) * h) / 2;
  const toBack = (h * (a + 2 * b)) / (3 * (a + b));
  const second = (h ** 3 * (a * a + 4 * a * b + b * b)) / (36 * (a + b));
  const load = glueLoad(700, 9, {
    areaMm2: area,
    secondMm4: second,
    toBackMm: toBack,
    toFrontMm: h - toBack,
  });
  expect(load.peel, 'the longer edge lies nearer to the centroid').toBeLessThan(load.press);
  let [force, moment] = [0, 0];
  const steps = 3000;
  for (let i = 0; i < steps; i++) {
    const y = ((i + 0.5) * h) / steps; // from the back
    const stress = load.peel + ((-load.press - load.peel) * y) / h;
    const strip = ((a + ((b - a) * y) / h) * h) / steps;
    force += stress * strip;
    moment += stress * strip * (toBack - y);
  }
  expect(force).toBeCloseTo(0, 3);
  expect(moment / 1000).toBeCloseTo(9, 4);
});

test('no face, no load', () => {
  expect(() => glueLoad(700, 9, { ...rectangle(155, 32), areaMm2: 0 })).toThrow(RangeError);
  expect(() => glueLoad(700, 9, { ...rectangle(155, 32), secondMm4: 0 })).toThrow(/needs an area/);
});
