import { expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { fieldsOf, GROUPS } from '../../src/design/fields.ts';
import { initialDesign } from '../../src/design/initial.ts';

test('the design of all defaults can be made', () => {
  const { design } = acceptDesign(initialDesign());
  expect(design.footprint.length).toBe(153);
  expect(design.strings.count).toBe(6);
});

test('it has every field of the table, in the table’s order', () => {
  const text = initialDesign();
  expect(Object.keys(text)).toEqual(['format', 'version', ...GROUPS]);
  for (const group of GROUPS) expect(Object.keys(text[group])).toEqual(Object.keys(fieldsOf(group)));
});

test('two of them share nothing that can be changed', () => {
  const [one, other] = [initialDesign(), initialDesign()];
  expect(one).toEqual(other);
  expect(one.top).not.toBe(other.top);
});
