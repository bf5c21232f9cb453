import { expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { jobByHand } from '../../src/making/jobByHand.ts';
import { readMeasured } from '../../src/making/readMeasured.ts';
import { usualWorkshop } from '../../src/making/workshop.ts';
import { designText, thrown } from '../support/change.ts';

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
    ['measured.check.depth', 'not-a-value'],
    ['measured.check.mass', 'not-a-value'],
    ['measured.slot.depth', 'not-a-value'],
  ]);
  for (const json of [[], 'x', null, 3])
    expect(thrown(() => readMeasured(json, steps))[0]?.path).toBe('measured');
});
