import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applies } from '../../src/design/applies.ts';
import type { DesignText } from '../../src/design/design.ts';
import { isNumberField } from '../../src/design/fields/kinds.ts';
import { type Problem, sayProblem } from '../../src/design/problem.ts';
import { change, problemsOf } from '../support/change.ts';
import { anyDesign } from '../support/designs.ts';
import { tableField } from '../support/draws.ts';

const SEED = 4711;
const designs = fc.sample(anyDesign(), { numRuns: 900, seed: SEED });
const refused: readonly { readonly text: DesignText; readonly problems: readonly Problem[] }[] = designs
  .map((text) => ({ text, problems: problemsOf(text) }))
  .filter(({ problems }) => problems.length > 0);

/** The limit that a refusal names, if it names one. */
function limitOf(
  p: Problem,
): { readonly words: string; readonly limit: number; readonly why: string } | undefined {
  const [, words, number, why] = /^(at most|at least) (-?[\d.]+)[^ ]*(?: mm)?(.*)$/.exec(p.allowed) ?? [];
  return words && number ? { words, limit: Number(number), why: why ?? '' } : undefined;
}

test('some are refused, and every refusal says where, what, what is allowed and what to do', () => {
  expect(refused.length).toBeGreaterThan(200);
  for (const { text, problems } of refused) {
    for (const p of problems) {
      expect(sayProblem(p)).not.toMatch(/NaN|undefined|Infinity/);
      expect(p.value).not.toBe('');
      expect(p.allowed).not.toBe('');
      expect(p.remedy).toMatch(/^[A-Z].*\.$/);
      const says = applies(p.path, text) || byOf(p.path) !== undefined;
      expect(says, `${p.path} has no say: ${JSON.stringify(text)}`).toBe(true);
    }
  }
});

/** The choice that says whether a number is solved or set, if there is one. */
function byOf(path: string): string | undefined {
  const field = tableField(path);
  return isNumberField(field) && field.by !== undefined ? `${path.split('.')[0]}.${field.by}` : undefined;
}

/** What must be chosen so that a number typed at `path` has a say. */
function setByHand(path: string): Readonly<Record<string, string>> {
  const by = byOf(path);
  return by === undefined ? {} : { [by]: 'set' };
}

test('a limit that is named is within the field’s own range', () => {
  for (const p of refused.flatMap(({ problems }) => problems)) {
    const found = limitOf(p);
    const field = tableField(p.path);
    if (!found || !isNumberField(field)) continue;
    expect(found.limit, sayProblem(p)).toBeGreaterThanOrEqual(field.min);
    expect(found.limit, sayProblem(p)).toBeLessThanOrEqual(field.max);
  }
});

/** Front and back edge share some fields: of several limits to one, the tightest counts. */
function tightest(problems: readonly Problem[], p: Problem): boolean {
  const mine = limitOf(p);
  return problems.every((other) => {
    const theirs = other.path === p.path && other !== p ? limitOf(other) : undefined;
    if (!mine || !theirs || mine.words !== theirs.words) return true;
    return mine.words === 'at most' ? mine.limit <= theirs.limit : mine.limit >= theirs.limit;
  });
}

test('a limit that is named is allowed: what was wrong is gone, or what is wrong is of another kind', () => {
  let tried = 0;
  for (const { text, problems } of refused) {
    for (const p of problems) {
      const found = limitOf(p);
      if (!found || !tightest(problems, p)) continue;
      tried++;
      const again = problemsOf(change(text, { ...setByHand(p.path), [p.path]: found.limit }));
      const same = again.find((q) => q.path === p.path && limitOf(q)?.why === found.why);
      expect(same && sayProblem(same), `after: ${sayProblem(p)} of ${JSON.stringify(text)}`).toBeUndefined();
    }
  }
  expect(tried).toBeGreaterThan(200);
});

test('where no value of a field is allowed, none is', () => {
  let tried = 0;
  for (const { text, problems } of refused) {
    for (const p of problems) {
      const field = tableField(p.path);
      if (!/^no .* will do/.test(p.allowed) || !isNumberField(field) || tried > 150) continue;
      tried++;
      for (let i = 0; i <= 12; i++) {
        const value = field.min + ((field.max - field.min) * i) / 12;
        const again = problemsOf(change(text, { ...setByHand(p.path), [p.path]: value }));
        expect(again, `${p.path} = ${value} after: ${sayProblem(p)}`).not.toEqual([]);
      }
    }
  }
  expect(tried).toBeGreaterThan(50);
});
