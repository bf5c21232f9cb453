import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { type FitReport, fitReport } from '../../../src/trade/fit/fitReport.ts';
import { type Loads, loads, type StringLoad } from '../../../src/trade/fit/loads.ts';
import { saddleWeight } from '../../../src/trade/fit/saddleWeight.ts';
import { BONE_KG_M3 } from '../../../src/trade/saddleMass.ts';
import { type Changes, change } from '../../support/change.ts';
import { acceptedDesigns } from '../../support/designs.ts';

/** A rectangle of 155 by 32, whose figures are known in closed form. */
const GLUE = { areaMm2: 155 * 32, secondMm4: (155 * 32 ** 3) / 12, toBackMm: 16, toFrontMm: 16 };

function loaded(changes: Changes = {}, spoilt: (report: FitReport) => Partial<FitReport> = () => ({})) {
  const { design, curves, fit } = acceptDesign(
    change(initialDesign(), { 'saddle.showing': 4.2, ...changes }),
  );
  const report = fitReport(design, curves, fit);
  return {
    design,
    curves,
    fit,
    report,
    ...loads(design, curves, fit, { ...report, ...spoilt(report) }, GLUE),
  };
}

function stringOf({ strings }: Loads, i: number): StringLoad {
  const string = strings[i];
  if (!string) throw new Error(`string ${i + 1} bears nothing`);
  return string;
}

describe('all strings together', () => {
  test('S6, B6: the light set on 25.4 in pulls 711.6 N, .14347 MPa on 155 by 32 (derived)', () => {
    const { pullN, glue } = loaded({ 'guitar.scale': '25.4 in' });
    expect(Math.abs(pullN - 711.6), `${pullN} N`).toBeLessThan(0.06);
    expect(Math.abs(glue.shear - 0.14347)).toBeLessThan(2e-5);
  });

  test('B1, B6: the couple is between that of the lowest and of the highest string; peel is 6M/(b·w²)', () => {
    const { pullN, coupleNm, glue, fit } = loaded();
    const { undersides } = fit.height;
    expect(coupleNm).toBeGreaterThan((pullN * Math.min(...undersides)) / 1000);
    expect(coupleNm).toBeLessThan((pullN * Math.max(...undersides)) / 1000);
    expect(glue.peel).toBeCloseTo((6000 * coupleNm) / (155 * 32 ** 2), 12);
  });

  test('a millimetre more under every string is a couple larger by a millimetre of their pull', () => {
    const [low, high] = [loaded(), loaded({ 'action.planeHeight': 10.3 })];
    expect(low.design.action.planeHeight).toBeCloseTo(9.3, 12);
    expect(high.coupleNm - low.coupleNm).toBeCloseTo(low.pullN / 1000, 6);
  });
});

describe('the initial design’s low E, by hand (derived)', () => {
  const { fit, report, ...made } = loaded();
  const low = stringOf(made, 5);
  const tension = fit.strings[5]?.tensionN ?? 0;

  test('H of its slopes .3666° in front and 34.4199° behind, shared by 4.647 showing over 4.647 in the slot', () => {
    const forward = tension * (Math.cos((0.3666 * Math.PI) / 180) - Math.cos((34.4199 * Math.PI) / 180));
    expect(low.saddle.forward).toBeCloseTo(forward, 3);
    expect(low.walls.tips).toBe('forward');
    expect(low.walls.front).toBeCloseTo(2 * forward, 2);
    expect(low.walls.back).toBeCloseTo(forward, 2);
  });

  test('its wall: 11/cos 2.9598° long; 11 + 27.5·tan − 1.6·cos thick; .854 MPa', () => {
    const lean = (2.9598 * Math.PI) / 180;
    const [share, thickness] = [11 / Math.cos(lean), 11 + 27.5 * Math.tan(lean) - 1.6 * Math.cos(lean)];
    expect(low.wall.share).toBeCloseTo(share, 9);
    expect(low.wall.thickness).toBeCloseTo(thickness, 6);
    expect(low.wall.height).toBeCloseTo(4.6472, 4);
    expect(low.wallStressMPa).toBeCloseTo(0.854, 3);
  });

  test('its hole: 8.1362 of top over a dome fallen by .0644, reamed at 5° from 5.6 to 5.2420 half way', () => {
    const thickness = 8.136245 + (28.5 ** 2 + 13 ** 2) / (2 * 7620);
    const diameter = 5.6 - 2 * Math.tan((2.5 * Math.PI) / 180) * (thickness / 2);
    const pull = tension * Math.cos((34.4199 * Math.PI) / 180);
    expect(diameter).toBeCloseTo(5.242, 3);
    expect(low.bearingMPa).toBeCloseTo(pull / (diameter * thickness), 4);
  });
});

test('a left-handed bridge bears the same, string by string', () => {
  const [right, left] = [loaded(), loaded({ 'guitar.hand': 'left' })];
  expect(left.coupleNm).toBeCloseTo(right.coupleNm, 9);
  right.strings.forEach((_, i) => {
    const [a, b] = [stringOf(right, i), stringOf(left, i)];
    expect(b.wallStressMPa, `string ${i + 1}`).toBeCloseTo(a.wallStressMPa, 9);
    expect(b.bearingMPa, `string ${i + 1}`).toBeCloseTo(a.bearingMPa, 9);
  });
});

test('B7: a saddle that leans back is pressed less against the front wall, and by a flat string back at last', () => {
  const [upright, some, much] = [0, 4, 12].map((tilt) => loaded({ 'saddle.tilt': tilt }));
  if (!upright || !some || !much) throw new Error('three designs');
  upright.strings.forEach((_, i) => {
    expect(stringOf(some, i).walls.front, `string ${i + 1}`).toBeLessThan(stringOf(upright, i).walls.front);
  });
  const first = stringOf(much, 0);
  const lean = (12 * Math.PI) / 180;
  const square = first.saddle.forward * Math.cos(lean) - first.saddle.down * Math.sin(lean);
  expect(square).toBeLessThan(0);
  expect(first.walls.tips).toBe('back');
  expect(first.walls.front - first.walls.back).toBeCloseTo(square, 9);
  expect(first.wallStressMPa, 'the front wall bears at its foot only').toBe(0);
  expect(stringOf(much, 5).walls.tips).toBe('forward');
});

test('B8: a deeper footprint in front is a thicker wall, less stressed by the square', () => {
  const [near, far] = [loaded(), loaded({ 'footprint.slotBehindFront': 13 })];
  const [a, b] = [stringOf(near, 2), stringOf(far, 2)];
  expect(b.wall.thickness - a.wall.thickness).toBeCloseTo(2, 9);
  expect(b.wallStressMPa / a.wallStressMPa).toBeCloseTo((a.wall.thickness / b.wall.thickness) ** 2, 9);
});

test('drilled thinner and left so, a hole bears more', () => {
  const [reamed, drilled] = [loaded(), loaded({ 'pins.taper': 0 })];
  expect(stringOf(drilled, 0).bearingMPa).toBeGreaterThan(stringOf(reamed, 0).bearingMPa);
});

describe('a string that the saddle doesn’t bear', () => {
  test('whose hole doesn’t lie behind the slot: no load of its own, but its pull counts', () => {
    const whole = loaded();
    const made = loaded({}, ({ breaks }) => ({
      breaks: breaks.map((one, i) => (i === 2 ? { ...one, over: undefined, load: undefined } : one)),
    }));
    expect(made.strings.map((one) => one !== undefined)).toEqual([true, true, false, true, true, true]);
    expect(made.pullN).toBe(whole.pullN);
    expect(made.glue).toEqual(whole.glue);
  });

  test('which runs under the bridge’s top', () => {
    const { strings, report } = loaded({
      'top.thicknessBy': 'set',
      'top.thickness': 12.8,
      'top.crown': 'set',
      'top.crownRadius': 2000,
    });
    const under = report.saddle.stands.map(({ showing }) => showing < 0);
    expect(under).toContain(true);
    expect(under).toContain(false);
    expect(strings.map((one) => one === undefined)).toEqual(under);
  });
});

test('60 random designs: walls balance what the saddle bears, the wall has wood, every figure is a number', () => {
  const { accepted } = acceptedDesigns(60, 4117);
  let borne = 0;
  for (const [i, { design, curves, fit }] of accepted.entries()) {
    const report = fitReport(design, curves, fit);
    const made = loads(design, curves, fit, report, GLUE);
    const name = `design ${i} of seed 4117`;
    const lean = (design.saddle.tilt * Math.PI) / 180;
    for (const one of made.strings) {
      if (!one) continue;
      borne++;
      const { down, forward } = one.saddle;
      const square = forward * Math.cos(lean) - down * Math.sin(lean);
      expect(one.walls.front - one.walls.back, name).toBeCloseTo(square, 8);
      expect(one.wall.thickness, name).toBeGreaterThan(0.49);
      expect(one.wallStressMPa, name).toBeGreaterThanOrEqual(0);
      expect(one.bearingMPa, name).toBeGreaterThan(0);
    }
    const { pullN, coupleNm, glue } = made;
    expect([pullN, coupleNm, ...Object.values(glue)].every(Number.isFinite), name).toBe(true);
    const mass = saddleWeight(curves.slot, report.saddle, BONE_KG_M3);
    expect(mass === undefined, name).toBe(report.saddle.top === undefined);
  }
  expect(borne, 'strings looked at').toBeGreaterThan(150);
});
