import { expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { jobByHand } from '../../src/making/jobByHand.ts';
import { plausible } from '../../src/making/plausible.ts';
import { readMeasured } from '../../src/making/readMeasured.ts';
import { whatItMeans } from '../../src/making/whatItMeans.ts';
import { usualWorkshop } from '../../src/making/workshop.ts';
import { designText, thrown } from '../support/change.ts';
import { bench } from './onBench.ts';

const steps = jobByHand(acceptDesign(designText()), usualWorkshop(3.2));

test('numbers in the setting’s unit, text with another, and blanks for what was not measured', () => {
  const json = {
    'check.thickness': 9.4,
    'slot.depth': '7/32 in',
    'check.mass': '1 oz',
    'slot.shim-angle': '2.7°',
    'check.length': '',
    'check.depth': null,
  };
  expect(readMeasured(json, steps)).toEqual({
    'check.thickness': 9.4,
    'slot.depth': (7 / 32) * 25.4,
    'check.mass': 28.349523125,
    'slot.shim-angle': 2.7,
  });
  expect(readMeasured({}, steps)).toEqual({});
});

test('says each that is none, with its address', () => {
  const json = {
    'check.thikness': 9,
    'check.tip': 'thin',
    'check.depth': -1,
    'check.mass': '30 mm',
    'slot.depth': true,
  };
  const problems = thrown(() => readMeasured(json, steps));
  expect(problems.map(({ path, code }) => [path, code])).toEqual([
    ['measured.check.thikness', 'unknown-field'],
    ['measured.check.tip', 'not-a-value'],
    ['measured.check.depth', 'out-of-range'],
    ['measured.check.mass', 'not-a-value'],
    ['measured.slot.depth', 'not-a-value'],
  ]);
  for (const json of [[], 'x', null, 3])
    expect(thrown(() => readMeasured(json, steps))[0]?.path).toBe('measured');
});

test('what no such setting can be is refused, with what is allowed', () => {
  const tip = bench({ 'top.tip': 3 });
  const refused = (given: unknown, id = 'check.tip') =>
    thrown(() => readMeasured({ [id]: given }, tip.steps))[0];
  for (const odd of [0, -0.01, 41, 1e300, '1e9', '3 m'])
    expect(refused(odd)?.allowed, String(odd)).toContain('more than 0 and at most 40 mm');
  expect(refused(1e300)?.remedy).toMatch(/more than 0 and at most 40 mm.*leave it blank/);
  expect(readMeasured({ 'check.tip': 40, 'check.mass': 0.1 }, tip.steps)).toEqual({
    'check.tip': 40,
    'check.mass': 0.1,
  });
  // 0.38 mm of gap ±0.05 is none that may be 0; a straightedge rocks on a gap of about nothing
  expect(refused(0, 'underside.gap')).toMatchObject({ code: 'out-of-range' });
  // where about nothing is wanted, nothing and a little the other way can be measured
  expect(plausible({ ...tip.setting('underside.gap'), value: 0.02 })).toEqual({ least: -1, most: 11 });
});

test('every measured value that is taken gives figures, never NaN or Infinity', () => {
  const one = bench({ 'saddle.tilt': 4 });
  for (const setting of one.steps.flatMap((step) => step.settings)) {
    const { least, most } = plausible(setting);
    for (const value of [least ?? 0.001, most]) {
      const said = whatItMeans(one.accepted, one.workshop, readMeasured({ [setting.id]: value }, one.steps));
      expect(JSON.stringify(said), `${setting.id}: ${value}`).not.toMatch(/null|NaN|Infinity/);
    }
  }
});
