import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applies } from '../../src/design/applies.ts';
import type { Typed } from '../../src/design/design.ts';
import { isNumberField } from '../../src/design/fields/kinds.ts';
import { readField } from '../../src/design/read.ts';
import { typedAt } from '../support/change.ts';
import { acceptedDesigns, anyDesign } from '../support/designs.ts';
import { PATHS, tableField } from '../support/draws.ts';

/*
 * The random designs on which the other laws stand: they must cover the whole of the table, or the laws say little.
 */
const asked = fc.sample(anyDesign(), { numRuns: 1500, seed: 99 });
const sample = acceptedDesigns(400, 99);

/** A typed value as the number it means. */
function numberAt(path: string, typed: Typed): number {
  const read = readField(path, tableField(path), typed);
  return 'value' in read ? Number(read.value) : Number.NaN;
}

test('every field of every design is within its own range: only combinations are refused', () => {
  const wrong = asked.flatMap((text) =>
    PATHS.filter((path) => !('value' in readField(path, tableField(path), typedAt(text, path)))).map(
      (path) => `${path}: ${typedAt(text, path)}`,
    ),
  );
  expect(wrong).toEqual([]);
  expect([...sample.refusals.keys()].filter((reason) => !reason.startsWith('does-not-fit '))).toEqual([]);
});

test('the same seed gives the same designs', () => {
  expect(acceptedDesigns(5, 7).accepted.map((d) => d.text)).toEqual(
    acceptedDesigns(5, 7).accepted.map((d) => d.text),
  );
});

test('a good share of them can be made', () => {
  const share = sample.accepted.length / sample.asked;
  expect(share).toBeGreaterThan(0.35);
  expect(share).toBeLessThan(0.65);
});

// these designs aim at nothing: few aims drawn at random can be met, and they have laws of their own
const aims = (path: string) => path.startsWith('aim.');
const numbers = PATHS.filter((path) => isNumberField(tableField(path)));
const choices = PATHS.filter((path) => tableField(path).kind === 'choice' && !aims(path));

describe.each(numbers)('%s', (path) => {
  const field = tableField(path);
  if (!isNumberField(field)) throw new Error('not reached');

  test('is asked for over its whole range, both ends included', () => {
    const values = asked.map((text) => numberAt(path, typedAt(text, path)));
    expect(Math.min(...values)).toBeCloseTo(field.min, 4);
    expect(Math.max(...values)).toBeCloseTo(field.max, 4);
  });

  if (aims(path)) return;
  test('is accepted over most of its range where it has a say', () => {
    const values = sample.accepted
      .filter(({ text }) => applies(path, text))
      .map(({ text }) => numberAt(path, typedAt(text, path)));
    expect(values.length).toBeGreaterThan(60);
    expect((Math.max(...values) - Math.min(...values)) / (field.max - field.min)).toBeGreaterThan(0.6);
  });
});

test.each(choices)('%s is accepted with each of its choices', (path) => {
  const field = tableField(path);
  if (field.kind !== 'choice') throw new Error('not reached');
  for (const choice of Object.keys(field.choices)) {
    const having = sample.accepted.filter(({ text }) => typedAt(text, path) === choice);
    expect(having.length, choice).toBeGreaterThan(sample.accepted.length / 10);
  }
});

test('lengths are typed as numbers, with a unit, in inches and in fractions', () => {
  const typed = asked
    .flatMap((text) => PATHS.map((path) => typedAt(text, path)))
    .filter((v) => typeof v === 'string');
  for (const form of [/^[\d.]+ mm$/, /^[\d.]+ in$/, /^\d+\/64 in$/, /^\d+ \d+\/64"$/]) {
    expect(typed.filter((v) => form.test(v)).length, `${form}`).toBeGreaterThan(100);
  }
});
