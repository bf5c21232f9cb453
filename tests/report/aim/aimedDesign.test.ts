import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { massG, surfaceFigures } from '../../../models/surface/figures.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { FOLLOWED } from '../../../src/design/followed.ts';
import { midStiffness } from '../../../src/report/midStiffness.ts';
import { tipWall } from '../../../src/report/tipWall.ts';
import { type Changes, designText, problemsOf } from '../../support/change.ts';

const accepted = (changes: Changes) => acceptDesign(designText(changes));
const mass = (changes: Changes) => {
  const { curves, design } = accepted(changes);
  return massG(surfaceFigures(curves, 'reamed').volumeMm3, design.timber.density);
};

describe('a dimension follows the mass aimed at', () => {
  const now = mass({});
  test.each(Object.keys(FOLLOWED))('%s', (follows) => {
    for (const by of [-1, 0.8]) {
      const { aimed, curves, design } = accepted({
        'aim.of': 'mass',
        'aim.mass': now + by,
        'aim.follows': follows,
      });
      expect(massG(surfaceFigures(curves, 'reamed').volumeMm3, design.timber.density)).toBeCloseTo(
        now + by,
        2,
      );
      expect(aimed?.reached, 'what it says it reached').toBeCloseTo(now + by, 2);
      expect(aimed?.path).toBe(FOLLOWED[follows as keyof typeof FOLLOWED]);
    }
  });

  test('a thickness that follows lets the action say what shows', () => {
    const { aimed, curves, fit } = accepted({
      'aim.of': 'mass',
      'aim.mass': now - 1,
      'aim.follows': 'thickness',
      'top.thicknessBy': 'solved',
      'saddle.showingBy': 'solved',
    });
    expect(curves.profile.thickness).toBe(aimed?.value);
    expect(fit.height.tooHigh, 'the action is kept').toBe(0);
  });

  test('more mass asked for, a thicker tip: and setting it by hand changes no curve', () => {
    fc.assert(
      fc.property(fc.double({ min: -1.2, max: 1.2, noNaN: true }), (by) => {
        const aim = { 'aim.of': 'mass', 'aim.mass': now + by };
        const { aimed, curves } = accepted(aim);
        expect(Math.sign((aimed?.value ?? 3) - 3)).toBe(
          Math.sign(by > 0.01 ? 1 : by < -0.01 ? -1 : (aimed?.value ?? 3) - 3),
        );
        expect(accepted({ 'top.tip': aimed?.value }).curves).toEqual(curves);
      }),
      { seed: 20261125, numRuns: 8 },
    );
  });
});

test.each(['thickness', 'depth'])('the stiffness in the middle by the %s', (follows) => {
  const asked = midStiffness(accepted({}).curves, 12.27) * 1.06;
  const { curves, aimed } = accepted({
    'aim.of': 'stiffness',
    'aim.stiffness': asked,
    'aim.stiffnessFollows': follows,
  });
  expect(midStiffness(curves, 12.27)).toBeCloseTo(asked, 2);
  expect(aimed?.path).toBe(FOLLOWED[follows as 'depth']);
});

test('the height at the tips by the tip: what the edge takes comes on top', () => {
  const { design, aimed } = accepted({
    'aim.of': 'tip',
    'aim.tip': 1.7,
    'top.edge': 'chamfer',
    'top.edgeSize': 0.8,
  });
  expect(aimed?.value).toBeCloseTo(2.5, 3);
  expect(tipWall(design)).toBeCloseTo(1.7, 3);
});

describe('an aim that cannot be met', () => {
  test('says how near one can come, and that is so', () => {
    const [problem, ...others] = problemsOf(designText({ 'aim.of': 'mass', 'aim.mass': 90 }));
    expect(others).toEqual([]);
    expect(problem?.path).toBe('aim.mass');
    expect(problem?.allowed).toMatch(/^at most (\d+\.\d+) g, with “Wing tip” at (\d+\.\d+) mm$/);
    const [, grams, tip] = /most (\S+) g, with .* at (\S+) mm/.exec(problem?.allowed ?? '') ?? [];
    expect(mass({ 'top.tip': Number(tip) - 0.01 })).toBeCloseTo(Number(grams), 0);
    expect(
      problemsOf(designText({ 'top.tip': Number(tip) + 0.1 })),
      'a thicker tip can’t be drawn',
    ).not.toEqual([]);
    // just inside, it is met
    expect(problemsOf(designText({ 'aim.of': 'mass', 'aim.mass': Number(grams) - 0.05 }))).toEqual([]);
  });

  test('a design that can’t be drawn for another reason says that reason', () => {
    const [problem] = problemsOf(designText({ 'aim.of': 'mass', 'pins.behindSlot': 4 }));
    expect(problem?.path).toMatch(/^(pins|saddle|footprint)\./);
  });
});

describe('whatever lies between the least and the most that can be drawn is met', () => {
  // set by hand, so that what stands in the way stands in one place
  test.each([
    ['stiffness', 'stiffnessFollows', 'thickness', 12, 45],
    ['mass', 'follows', 'thickness', 22, 38],
    ['mass', 'follows', 'depth', 24, 40],
  ])('%s, %s %s', (of, field, follows, least, most) => {
    const reached: number[] = [];
    const said: number[] = [];
    for (let asked = least; asked <= most; asked += (most - least) / 23) {
      const text = designText({ 'aim.of': of, [`aim.${of}`]: asked, [`aim.${field}`]: follows });
      const [problem] = problemsOf(text);
      if (!problem) reached.push(acceptDesign(text).aimed?.reached ?? Number.NaN);
      else said.push(Number(/at (?:most|least) (\S+)/.exec(problem.allowed)?.[1]));
    }
    expect(reached.length, 'some are met').toBeGreaterThan(5);
    const [low, high] = [Math.min(...reached), Math.max(...reached)];
    for (const nearest of said)
      expect(nearest <= low || nearest >= high, `${nearest} is said to be the end of ${low} to ${high}`).toBe(
        true,
      );
  });
});
