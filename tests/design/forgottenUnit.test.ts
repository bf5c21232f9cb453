import { expect, test } from 'vitest';
import { FIELDS } from '../../src/design/fields.ts';
import { forgottenUnit } from '../../src/design/forgottenUnit.ts';
import { sayProblem } from '../../src/design/problem.ts';
import { designText, problemsOf } from '../support/change.ts';

test.each<[string, number | string, string]>([
  ['guitar.soundboardRadius', 8.5, '8.5 is read as millimetres: write 8.5 m or 8.5 ft. '],
  ['guitar.soundboardRadius', '25', '25 is read as millimetres: write 25 m or 25 ft. '],
  ['guitar.fretboardRadius', 16, '16 is read as millimetres: write 16 in. '],
  ['guitar.scale', '25,5', '25,5 is read as millimetres: write 25,5 in. '],
  ['guitar.scale', '25 1/2', '25 1/2 is read as millimetres: write 25 1/2 in. '],
  ['pins.drill', '3/16', '3/16 is read as millimetres: write 3/16 in. '],
  ['guitar.scale', 1000, ''],
  ['guitar.scale', '25.5 mm', ''],
  ['guitar.scale', -25.5, ''],
])('%s typed as %j', (path, typed, hint) => {
  const [group = '', key = ''] = path.split('.');
  const fields = FIELDS as unknown as Record<string, Record<string, { min: number; max: number }>>;
  const field = fields[group]?.[key];
  if (!field) throw new Error(`no field ${path}`);
  expect(forgottenUnit(typed, field)).toBe(hint);
});

test('a refusal of a length says which unit may have been left out; that of a count says none', () => {
  const [scale] = problemsOf(designText({ 'guitar.scale': 25.5 }));
  expect(scale && sayProblem(scale)).toBe(
    'guitar.scale: 25.5 is given. 25.5 is read as millimetres: write 25.5 in. Keep it within 480 to 900 mm.',
  );
  expect(problemsOf(designText({ 'strings.count': 0.5 })).map((p) => p.remedy)).toEqual([
    'Type a whole number.',
  ]);
});
