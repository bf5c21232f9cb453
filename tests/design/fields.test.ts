import { describe, expect, test } from 'vitest';
import type { Field } from '../../src/design/fields/kinds.ts';
import { isListField } from '../../src/design/fields/kinds.ts';
import { fieldsOf, GROUPS } from '../../src/design/fields.ts';
import { readField } from '../../src/design/read.ts';

const ALL: readonly [string, Field][] = GROUPS.flatMap((group) =>
  Object.entries(fieldsOf(group)).map(([key, field]): [string, Field] => [`${group}.${key}`, field]),
);

describe.each(ALL)('%s', (path, field) => {
  test('has a label and one line of help that ends as a sentence', () => {
    expect(field.label).toMatch(/^\S.*\S$/);
    expect(field.help).toMatch(/^[A-Z].*[.?]$/);
    expect(field.help).not.toContain('\n');
  });

  test('has a default that it takes itself', () => {
    expect(readField(path, field, field.default)).toHaveProperty('value');
  });

  test('has a range or choices to choose from', () => {
    if (field.kind === 'choice') expect(Object.keys(field.choices).length).toBeGreaterThan(1);
    else if (field.kind === 'text' || field.kind === 'notes') expect(field.maxLength).toBeGreaterThan(0);
    else {
      expect(field.max).toBeGreaterThan(field.min);
      for (const end of [field.min, field.max]) {
        expect(readField(path, field, isListField(field) ? [end] : end)).toHaveProperty('value');
      }
      for (const beyond of [field.min - 0.001, field.max + 0.001]) {
        const found = readField(path, field, isListField(field) ? [beyond] : beyond);
        expect(found, `${beyond} is beyond the range`).toMatchObject([{}]);
      }
    }
  });

  test('is stepped through by a step that its range has room for', () => {
    if (!('step' in field)) return;
    expect(field.step).toBeGreaterThan(0);
    expect(field.step).toBeLessThan((field.max - field.min) / 5);
  });
});
