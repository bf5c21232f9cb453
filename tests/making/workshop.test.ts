import { describe, expect, test } from 'vitest';
import { readWorkshop, usualWorkshop, WORKSHOP } from '../../src/making/workshop.ts';
import { thrown } from '../support/change.ts';

test('nothing given is the usual workshop', () => {
  expect(readWorkshop({})).toMatchObject({
    drill: 'press',
    slot: 'router',
    outline: 'machine',
    baseWidth: 90,
    jigLength: 300,
    shimSide: 'front',
    greatestPass: 1.2,
    reamBy: 'diameter',
  });
  expect(Object.keys(readWorkshop({})).sort()).toEqual(Object.keys(WORKSHOP).sort());
});

test('every label tells what it is about where it stands bare', () => {
  const labels = Object.values(WORKSHOP).map(({ label }) => label);
  expect(new Set(labels).size).toBe(labels.length);
  for (const label of [
    'Jig’s rail, length',
    'Wood round the outline',
    'Wood over the crown',
    'Wood left for finishing',
  ])
    expect(labels).toContain(label);
});

test('lengths may be typed with their unit', () => {
  expect(readWorkshop({ cutter: '1/8 in', baseWidth: '4 in' })).toMatchObject({
    cutter: 3.175,
    baseWidth: 101.6,
  });
});

test.each([
  [1.2, 1],
  [2.4, 2.38125],
  [3, 3],
  [3.2, 3.175],
  [8, 6],
])('the usual cutter for a slot of %f is %f', (width, cutter) => {
  expect(usualWorkshop(width).cutter).toBe(cutter);
});

describe('refused with path, value and what is allowed', () => {
  test.each<[unknown, string, string]>([
    [{ cutter: 0 }, 'workshop.cutter', 'out-of-range'],
    [{ cutter: 'thin' }, 'workshop.cutter', 'not-a-value'],
    [{ baseWidth: Number.NaN }, 'workshop.baseWidth', 'not-a-value'],
    [{ drill: 'laser' }, 'workshop.drill', 'not-a-choice'],
    [{ greatestPass: '1 kg' }, 'workshop.greatestPass', 'wrong-unit'],
    [{ router: 'big' }, 'workshop.router', 'unknown-field'],
    [{ topAllowance: 0.1, finishAllowance: 0.2 }, 'workshop.topAllowance', 'does-not-fit'],
    [[], 'workshop', 'not-a-value'],
    [null, 'workshop', 'not-a-value'],
  ])('%o', (given, path, code) => {
    const problems = thrown(() => readWorkshop(given));
    expect(problems).toMatchObject([{ path, code }]);
    expect(problems[0]?.allowed).toMatch(/\S/);
    expect(problems[0]?.remedy).toMatch(/\S/);
  });

  test('all of them at once', () => {
    expect(thrown(() => readWorkshop({ cutter: 0, drill: 3, extra: 1 }))).toHaveLength(3);
  });
});
