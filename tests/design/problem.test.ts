import { describe, expect, test } from 'vitest';
import {
  DesignError,
  misfit,
  type Problem,
  roundForReading,
  sayProblem,
  tooLittle,
  tooMuch,
  unfitting,
} from '../../src/design/problem.ts';

describe('a limit is rounded to the side on which it is itself allowed', () => {
  test.each([
    [3.456, 'at most 3.45 mm in this wood'],
    [3.4, 'at most 3.4 mm in this wood'],
    [3, 'at most 3 mm in this wood'],
  ])('at most %d', (most, allowed) => {
    expect(tooMuch('saddle.depth', 9, most, 'in this wood', 'Less.').allowed).toBe(allowed);
  });

  test.each([
    [3.451, 'at least 3.46 mm in this wood'],
    [3.4, 'at least 3.4 mm in this wood'],
  ])('at least %d', (least, allowed) => {
    expect(tooLittle('saddle.depth', 2, least, 'in this wood', 'More.').allowed).toBe(allowed);
  });

  test('degrees stand close to their number, counts have no unit', () => {
    expect(tooMuch('pins.bevelAngle', 120, 99.99, 'here', 'Less.').allowed).toBe('at most 99.99° here');
    expect(tooMuch('strings.count', 12, 7, 'here', 'Less.').allowed).toBe('at most 7 here');
  });
});

test('a limit outside the field’s own range is not offered', () => {
  expect(tooMuch('saddle.depth', 2, 0.4, 'in this wood', '').allowed).toBe(
    'no slot depth from 1 to 16 mm will do in this wood',
  );
  expect(tooMuch('saddle.depth', 2, -3, 'in this wood', '').allowed).toBe(
    'no slot depth from 1 to 16 mm will do in this wood',
  );
  expect(tooLittle('saddle.depth', 2, 16.001, 'here', '').allowed).toBe(
    'no slot depth from 1 to 16 mm will do here',
  );
});

describe('where there is no formula, the nearest value that fits is found', () => {
  const allowed = (value: number, fits: (v: number) => boolean) =>
    unfitting('saddle.depth', value, fits, 'here', 'Change it.').allowed;

  test('below', () => expect(allowed(9, (v) => v <= 6.2345)).toMatch(/^at most 6\.23 mm here$/));
  test('above', () => expect(allowed(2, (v) => v >= 6.2345)).toMatch(/^at least 6\.24 mm here$/));
  test('the nearer of two sides', () => {
    expect(allowed(5, (v) => v <= 4 || v >= 12)).toMatch(/^at most (4|3\.99) mm here$/);
    expect(allowed(11, (v) => v <= 4 || v >= 12)).toMatch(/^at least (12|12\.01) mm here$/);
  });
  test('none', () => expect(allowed(9, () => false)).toBe('no slot depth from 1 to 16 mm will do here'));
  test('what is said does fit', () => {
    for (let limit = 1.5; limit < 15; limit += 0.377) {
      const said = Number(/[\d.]+/.exec(allowed(15.9, (v) => v <= limit))?.[0]);
      expect(said).toBeLessThanOrEqual(limit);
      expect(said).toBeGreaterThan(limit - 0.02);
    }
  });
});

test('an error says every problem, one a line, each with where, what, what is allowed and what to do', () => {
  const first = misfit('top.tip', 12.34567, 'at most 3 mm', 'Thin it.');
  const error = new DesignError([first, { ...first, path: '' }]);
  expect(error.message.split('\n')).toEqual([
    'top.tip: 12.346 does not fit. At most 3 mm. Thin it.',
    'design: 12.346 does not fit. At most 3 mm. Thin it.',
  ]);
  expect(sayProblem(first)).toBe(error.message.split('\n')[0]);
  expect(error).toBeInstanceOf(Error);
  expect(error.name).toBe('DesignError');
});

test.each<[Problem['code'], string, string, string, string]>([
  [
    'out-of-range',
    '99',
    '1 to 10 mm',
    'Keep it within 1 to 10 mm.',
    '99 is given. Keep it within 1 to 10 mm.',
  ],
  ['wrong-unit', '"3 mm"', 'an angle', 'Type an angle.', '"3 mm" is given. Type an angle.'],
  [
    'not-a-value',
    '""',
    '1 to 9 characters',
    'Name it.',
    'nothing is given. Allowed: 1 to 9 characters. Name it.',
  ],
  ['not-a-choice', '"both"', 'right, left', 'Choose.', '"both" is given. Allowed: right, left. Choose.'],
  ['missing-field', 'nothing', '1 to 10 mm', 'Add it.', 'missing. Allowed: 1 to 10 mm. Add it.'],
  ['missing-field', '9', 'a group of fields', 'Add it.', '9 is given. Allowed: a group of fields. Add it.'],
  ['unknown-field', 'an unknown field', 'a, b', 'Go.', 'there is no such field. There are: a, b. Go.'],
  ['newer-version', '2', 'version 1', 'Go.', '2 is given. Allowed: version 1. Go.'],
  [
    'not-a-design',
    'an empty file',
    'a file',
    'Go.',
    'this is not a bridge design, but an empty file. Allowed: a file. Go.',
  ],
  ['broken-file', 'it is empty', 'a file', 'Go.', "it can't be read: it is empty. Allowed: a file. Go."],
  ['does-not-fit', '57', 'no x will do here', 'Go.', '57 does not fit. No x will do here. Go.'],
])('%s %s is a sentence of its own, and says nothing twice', (code, value, allowed, remedy, said) => {
  expect(sayProblem({ code, path: 'here', value, allowed, remedy })).toBe(`here: ${said}`);
});

test('numbers are read at the bench with two decimals at most', () => {
  expect([1.005, 3, 2.3456, -0.001].map(roundForReading)).toEqual([1, 3, 2.35, -0]);
});
