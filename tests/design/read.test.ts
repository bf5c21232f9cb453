import { describe, expect, test } from 'vitest';
import { FORMAT, VERSION } from '../../src/design/design.ts';
import { FIELDS, fieldsOf, GROUPS } from '../../src/design/fields.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { sayProblem } from '../../src/design/problem.ts';
import { describe as describeValue, readDesign } from '../../src/design/read.ts';
import { designText, thrown } from '../support/change.ts';

/** The only problem that reading a design of all defaults with one change has. */
function problem(changes: Readonly<Record<string, unknown>>) {
  const problems = thrown(() => readDesign(designText(changes)));
  expect(problems, problems.map(sayProblem).join('\n')).toHaveLength(1);
  return problems[0];
}

describe('a design that is right', () => {
  test('gives every field in mm and degrees, and the text as it was typed', () => {
    const text = designText({
      'top.thickness': '3/8 in',
      'guitar.soundboardRadius': '25 ft',
      'saddle.angle': '2.9°',
    });
    const read = readDesign(text);
    expect(read.design.top.thickness).toBeCloseTo(9.525, 12);
    expect(read.design.guitar.soundboardRadius).toBeCloseTo(7620, 9);
    expect(read.design.saddle.angle).toBe(2.9);
    expect(read.design.strings.diameters[5]).toBeCloseTo(1.3462, 12);
    expect(read.text).toEqual(text);
  });

  test('keeps nothing that it was not given, and is not changed by reading', () => {
    const text = initialDesign();
    const before = JSON.stringify(text);
    readDesign(text);
    expect(JSON.stringify(text)).toBe(before);
  });

  test('may come in any order of groups and fields', () => {
    const text = initialDesign();
    const backwards = Object.fromEntries(
      Object.entries(text)
        .reverse()
        .map(([key, value]) =>
          typeof value === 'object'
            ? [key, Object.fromEntries(Object.entries(value).reverse())]
            : [key, value],
        ),
    );
    expect(readDesign(backwards).design).toEqual(readDesign(text).design);
  });

  test('takes both ends of every range as inches, which rarely land on them exactly', () => {
    for (const group of GROUPS) {
      for (const [key, field] of Object.entries(fieldsOf(group))) {
        if (field.kind !== 'length') continue;
        for (const end of [field.min, field.max]) {
          const typed = `${(end / 25.4).toFixed(7)} in`;
          expect(
            thrown(() => readDesign(designText({ [`${group}.${key}`]: typed }))),
            `${group}.${key} ${typed}`,
          ).toEqual([]);
        }
      }
    }
  });
});

describe('what is no design is refused as a whole', () => {
  test.each<[string, unknown, string]>([
    ['nothing', undefined, 'nothing'],
    ['null', null, 'null'],
    ['a number', 7, '7'],
    ['a list', [], '[]'],
    ['text', 'bridge', '"bridge"'],
    ['another program’s JSON', { format: 'drawing' }, 'format "drawing"'],
    ['an empty object', {}, 'format nothing'],
  ])('%s', (_what, json, value) => {
    const problems = thrown(() => readDesign(json));
    expect(problems).toEqual([
      {
        code: 'not-a-design',
        path: '',
        value,
        allowed: `a JSON object with "format": "${FORMAT}"`,
        remedy: 'Open a design file written by this program, or start from one of the starters.',
      },
    ]);
  });

  test.each([VERSION + 1, 0, '1', undefined, null, Number.NaN])('version %j', (version) => {
    const problems = thrown(() => readDesign({ ...initialDesign(), version }));
    expect(problems).toMatchObject([
      { code: 'newer-version', path: 'version', allowed: `version 1 to ${VERSION}` },
    ]);
  });
});

describe('each wrong field is refused with its path, its value, what is allowed and what to do', () => {
  test.each<[string, unknown, string, string, string, string]>([
    ['top.thickness', 30, 'out-of-range', '30', '5 to 18 mm', 'Keep it within 5 to 18 mm.'],
    ['top.thickness', '2 in', 'out-of-range', '"2 in"', '5 to 18 mm', 'Keep it within 5 to 18 mm.'],
    ['top.thickness', 4.9999, 'out-of-range', '4.9999', '5 to 18 mm', 'Keep it within 5 to 18 mm.'],
    ['saddle.angle', 9.1, 'out-of-range', '9.1', '-3 to 9 °', 'Keep it within -3 to 9 °.'],
    ['strings.count', 13, 'out-of-range', '13', '4 to 12', 'Keep it within 4 to 12.'],
    ['strings.count', 6.5, 'not-a-value', '6.5', 'a whole number, 4 to 12', 'Type a whole number.'],
    [
      'timber.density',
      '2 g/cm³',
      'out-of-range',
      '"2 g/cm³"',
      '300 to 1500 kg/m³',
      'Keep it within 300 to 1500 kg/m³.',
    ],
    ['guitar.hand', 'both', 'not-a-choice', '"both"', 'right, left', 'Choose one of these.'],
    ['guitar.hand', 'toString', 'not-a-choice', '"toString"', 'right, left', 'Choose one of these.'],
    ['guitar.hand', 1, 'not-a-choice', '1', 'right, left', 'Choose one of these.'],
    ['guitar.name', '  ', 'not-a-value', '"  "', '1 to 300 characters in one line', 'Give it a short name.'],
    [
      'guitar.name',
      'x'.repeat(301),
      'not-a-value',
      `"${'x'.repeat(56)}…`,
      '1 to 300 characters in one line',
      'Give it a short name.',
    ],
    [
      'guitar.name',
      'two\nlines',
      'not-a-value',
      '"two\\nlines"',
      '1 to 300 characters in one line',
      'Give it a short name.',
    ],
    ['guitar.name', 7, 'not-a-value', '7', '1 to 300 characters in one line', 'Give it a short name.'],
    [
      'strings.diameters',
      [],
      'not-a-value',
      '[]',
      '1 to 12, each 0.15 to 2.5 mm',
      'Give one for each string, treble first.',
    ],
    [
      'strings.diameters',
      'all of them',
      'not-a-value',
      '"all of them"',
      '1 to 12, each 0.15 to 2.5 mm',
      'Give one for each string, treble first.',
    ],
  ])('%s %j', (path, given, code, value, allowed, remedy) => {
    expect(problem({ [path]: given })).toEqual({ code, path, value, allowed, remedy });
  });

  test.each<[unknown, string]>([
    [Number.NaN, 'NaN'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
    [null, 'null'],
    [true, 'true'],
    [[9], '[9]'],
    [{ mm: 9 }, '{"mm":9}'],
    ['nine', '"nine"'],
  ])('a thickness of %j is no value', (given, value) => {
    const found = problem({ 'top.thickness': given });
    expect(found).toMatchObject({ code: 'not-a-value', path: 'top.thickness', value });
    expect(found?.allowed).toContain('3/8 in');
  });

  test('a wrong unit says which units there are', () => {
    expect(problem({ 'top.thickness': '9 kg' })).toMatchObject({
      code: 'wrong-unit',
      path: 'top.thickness',
      value: '"9 kg"',
      remedy: 'Type a length such as 9.5, 9.5 mm, 3/8 in, 1 1/2" or 25 ft.',
    });
  });

  test('a wrong entry of a list is named by its place, counted from 1', () => {
    const six = ['0.012 in', 0.4, 'thick', 0.8, 9, '0.053 in'];
    const problems = thrown(() => readDesign(designText({ 'strings.diameters': six })));
    expect(problems.map((p) => [p.code, p.path])).toEqual([
      ['not-a-value', 'strings.diameters.3'],
      ['out-of-range', 'strings.diameters.5'],
    ]);
  });

  test('an unknown field, an unknown group and a missing field are named', () => {
    expect(problem({ 'top.colour': 'brown' })).toMatchObject({ code: 'unknown-field', path: 'top.colour' });
    const { timber, ...rest } = initialDesign();
    expect(thrown(() => readDesign({ ...rest, wood: timber }))).toMatchObject([
      { code: 'unknown-field', path: 'wood', allowed: GROUPS.join(', ') },
      { code: 'missing-field', path: 'timber', value: 'nothing' },
    ]);
    const { tip, ...top } = initialDesign().top;
    expect(thrown(() => readDesign({ ...initialDesign(), top }))).toMatchObject([
      { code: 'missing-field', path: 'top.tip', allowed: '1 to 10 mm' },
    ]);
    expect(tip).toBe(FIELDS.top.tip.default);
    expect(thrown(() => readDesign({ ...initialDesign(), top: 9 }))).toMatchObject([
      { code: 'missing-field', path: 'top', value: '9' },
    ]);
  });

  test('every problem is found, not only the first', () => {
    const problems = thrown(() =>
      readDesign(designText({ 'top.tip': 'x', 'saddle.depth': 99, 'guitar.hand': '', 'pins.colour': 1 })),
    );
    expect(problems.map((p) => p.path).sort()).toEqual([
      'guitar.hand',
      'pins.colour',
      'saddle.depth',
      'top.tip',
    ]);
  });
});

test('a field that JSON takes from __proto__ is unknown, and touches nothing', () => {
  const json = JSON.stringify(initialDesign()).replace(
    '"top":{',
    '"__proto__":{"polluted":1},"top":{"__proto__":2,',
  );
  const problems = thrown(() => readDesign(JSON.parse(json)));
  expect(problems.map((p) => [p.code, p.path])).toEqual([
    ['unknown-field', '__proto__'],
    ['unknown-field', 'top.__proto__'],
  ]);
  expect(Reflect.get({}, 'polluted')).toBeUndefined();
});

test('a long value is shortened for a message', () => {
  expect(describeValue('a'.repeat(500))).toHaveLength(58);
});
