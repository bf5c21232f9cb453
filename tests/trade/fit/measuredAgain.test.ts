import { expect, test } from 'vitest';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { FIELDS } from '../../../src/design/fields.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { fitReport } from '../../../src/trade/fit/fitReport.ts';
import { type Changes, change } from '../../support/change.ts';

const reported = (changes: Changes) => {
  const { design, curves, fit } = acceptDesign(change(initialDesign(), changes));
  return fitReport(design, curves, fit);
};

test('cents that no saddle could cure were misread: no set-back', () => {
  // about 0.37 mm a cent (derived): 60 cents ask for 22 mm more, −60 for 22 less; 5 cents for 2 mm
  const { measured } = reported({ 'action.cents': [60, -60, 5, '', '', ''] });
  const { setbacks, misread } = measured;
  expect(misread).toEqual([true, true, false, false, false, false]);
  expect(setbacks.map((one) => one !== undefined)).toEqual([false, false, true, false, false, false]);
  expect(setbacks[2]).toBeLessThanOrEqual(FIELDS.strings.setbacks.max);
});

test('the first and the last entry are the outer strings’, in a list of two as in one for each string', () => {
  const two = reported({ 'action.measured': [2.1, 2.8] }).measured.saddles;
  expect(two).toHaveLength(6);
  // 1.9 and 2.4 are wanted: twice the difference comes off (derived)
  expect(two[0]?.change).toBeCloseTo(-0.4, 9);
  expect(two[5]?.change).toBeCloseTo(-0.8, 9);
  const six = reported({ 'action.measured': [2.1, 2.2, 2.3, 2.5, 2.6, 2.8] }).measured.saddles;
  expect(six).toEqual(two);
});

test.each([[[2.1]], [[2.1, '']], [['', 2.8]], [[2.1, 2.2, 2.3, 2.5, 2.6, '']]])(
  'without both outer strings nothing is said of the saddle: %j',
  (measured) => {
    expect(reported({ 'action.measured': measured }).measured.saddles).toEqual([]);
  },
);

test('a leaning saddle changes along its lean, so that its crown moves by as much as an upright one’s', () => {
  const tilt = 10;
  const { saddle, measured } = reported({ 'saddle.tilt': tilt, 'action.measured': [2.1, 2.4] });
  const [first] = measured.saddles;
  const along = -0.4 / Math.cos((tilt * Math.PI) / 180);
  expect(first?.rise).toBeCloseTo(-0.4, 9);
  expect(first?.change).toBeCloseTo(along, 9);
  expect(first?.height).toBeCloseTo((saddle.stands[0]?.height ?? 0) + along, 9);
  expect(first?.showing).toBeCloseTo((saddle.stands[0]?.showing ?? 0) + along, 9);
});
