import { describe, expect, test } from 'vitest';
import { sayProblem } from '../../src/design/problem.ts';
import { designText, problemsOf } from '../support/change.ts';

describe('limits of a pair that cross are refused', () => {
  test.each([
    ['showing', 4.6, 'mm'],
    ['string', 13.6, 'mm'],
    ['gap', 1.6, 'mm'],
    ['tip', 4.1, 'mm'],
    ['mass', 35.5, 'g'],
  ])('%s, least %d', (of, least, unit) => {
    const [problem, ...more] = problemsOf(designText({ [`limits.${of}Least`]: least }));
    expect(more).toEqual([]);
    expect(problem).toMatchObject({
      code: 'does-not-fit',
      path: `limits.${of}Least`,
      value: String(least),
      allowed: expect.stringMatching(new RegExp(`^at most [\\d.]+ ${unit}, the “.*, most”$`)),
    });
  });

  test('all at once, each with what to do', () => {
    const crossed = problemsOf(designText({ 'limits.tipLeast': 5, 'limits.massMost': 12 }));
    expect(crossed.map(sayProblem)).toEqual([
      'limits.tipLeast: 5 does not fit. At most 4 mm, the “Wing tip, most”. Lower it, or raise “Wing tip, most”.',
      'limits.massLeast: 20 does not fit. At most 12 g, the “Mass, most”. Lower it, or raise “Mass, most”.',
    ]);
  });

  test('the same for both is no crossing', () => {
    expect(problemsOf(designText({ 'limits.tipLeast': 3, 'limits.tipMost': 3 }))).toEqual([]);
  });
});
