import { expect, test } from 'vitest';
import { withSetbacksTaken, withShowingTaken } from '../../src/app/form/again/takenOver.ts';
import { judge } from '../../src/app/store/judge.ts';
import { reportOf } from '../../src/app/store/reportOf.ts';
import type { DesignText } from '../../src/design/design.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { change } from '../support/change.ts';

function reported(text: DesignText) {
  const { accepted, problems } = judge(text);
  expect(problems).toEqual([]);
  if (!accepted) throw new Error('this design can be made');
  return { ...accepted, report: reportOf(accepted) };
}

test('corrected set-backs go into the measured ones, and the slot follows them', () => {
  const text = change(initialDesign(), {
    'action.cents': [3, -2, 4, 3, 3, 3],
    'strings.setbacks': ['', '', '', '', '', 6.1],
  });
  const before = reported(text);
  const { setbacks } = before.report.measured;
  const taken = withSetbacksTaken(text, { setbacks });
  expect(taken.action.cents).toEqual(['', '', '', '', '', '']);
  const after = reported(taken);
  after.fit.slot.wanted.forEach(({ saddleMm, measured }, i) => {
    expect(measured).toBe(true);
    expect(saddleMm).toBeCloseTo(setbacks[i] ?? Number.NaN, 2);
  });
  // about 0.37 mm a cent on 645 (derived: scale·ln 2/1200): 14 cents over six strings are 2.3 cents on the average
  const moved = after.fit.solved['saddle.setback'].used - before.fit.solved['saddle.setback'].used;
  expect(moved).toBeGreaterThan(0.5);
  expect(moved).toBeLessThan(1.4);
});

test('strings without cents keep theirs, and what no set-back within reach cures is left to be measured again', () => {
  const text = change(initialDesign(), {
    'action.cents': ['', 2, '', 60, '', ''],
    'strings.setbacks': [2.4, '', '', '', '', ''],
  });
  const { setbacks } = reported(text).report.measured;
  expect(setbacks[3], 'some 25 mm would be asked').toBeUndefined();
  expect(setbacks[1]).toBeGreaterThan(0);
  const taken = withSetbacksTaken(text, { setbacks });
  expect(taken.strings.setbacks).toEqual([2.4, Math.round(100 * (setbacks[1] ?? 0)) / 100, '', '', '', '']);
  expect(taken.action.cents).toEqual(['', '', '', 60, '', '']);
  expect(judge(taken).problems).toEqual([]);
});

test('a lower saddle shows that much less, and the measured action is done with', () => {
  const text = change(initialDesign(), {
    'top.thicknessBy': 'set',
    'saddle.showingBy': 'set',
    'saddle.showing': '5 mm',
    'action.measured': [2.2, 2.6],
  });
  const { fit, report } = reported(text);
  expect(report.measured.saddles[0]?.change).toBeCloseTo(-0.6, 9);
  const taken = withShowingTaken(text, fit.solved['saddle.showing'].used, -0.504);
  expect(taken.saddle.showing).toBe(4.5);
  expect(taken.action.measured).toEqual(['', '']);
  expect(judge(taken).problems).toEqual([]);
});

test('a report is worked out once for a design', () => {
  const { accepted } = judge(initialDesign());
  if (!accepted) throw new Error('the first design can be made');
  expect(reportOf(accepted)).toBe(reportOf(accepted));
});
