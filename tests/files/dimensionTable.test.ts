import { expect, test } from 'vitest';
import { STARTER_FILES } from '../../src/cli/starterFiles.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { dimensionCsv, dimensionJson, dimensionTable } from '../../src/files/dimensionTable.ts';

const made = acceptDesign(initialDesign());
const row = (path: string, source = made) => dimensionTable(source).find((one) => one.path === path);

test('a number stands as typed and in its unit', () => {
  const inches = acceptDesign({
    ...initialDesign(),
    pins: { ...initialDesign().pins, drill: '3/16 in' },
  });
  expect(row('pins.drill', inches)).toMatchObject({
    group: 'pins',
    value: 4.7625,
    unit: 'mm',
    typed: '3/16 in',
    by: 'set',
  });
});

test('a number that is solved stands as solved, and what its field says is left out', () => {
  const { solved } = made.fit;
  for (const path of ['saddle.angle', 'top.thickness'] as const) {
    expect(solved[path].by, path).toBe('solved');
    expect(row(path)).toMatchObject({ typed: '', by: 'solved' });
    expect(row(path)?.value).toBeCloseTo(solved[path].used, 6);
  }
});

test.each(['tip', 'thickness', 'block', 'length', 'depth'])(
  '%s that follows an aim stands as it came out',
  (follows) => {
    const text = initialDesign();
    const aiming = acceptDesign({ ...text, aim: { ...text.aim, of: 'mass', mass: 26, follows } });
    const { path, value } = aiming.aimed ?? { path: '', value: 0 };
    expect(row(path, aiming)).toMatchObject({ typed: '', by: 'follows' });
    expect(row(path, aiming)?.value).toBeCloseTo(value, 6);
  },
);

test('limits are no dimensions', () => {
  expect(dimensionTable(made).filter(({ group }) => group === 'limits')).toEqual([]);
});

test('choices are in words, lists have a row for each string, what has no say is left out', () => {
  expect(row('saddle.ends')?.value).toMatch(/[a-z]/);
  expect(row('saddle.ends')?.typed).toBe(String(made.text.saddle.ends));
  const { count, diameters } = made.design.strings;
  const rows = (list: string) =>
    dimensionTable(made).filter(({ path }) => path.startsWith(`strings.${list}.`));
  expect(rows('diameters')).toHaveLength(count);
  expect(rows('diameters')[1]).toMatchObject({
    path: 'strings.diameters.2',
    label: 'Diameters, string 2',
    value: Number(diameters[1]?.toFixed(6)),
    unit: 'mm',
    typed: '0.016 in',
  });
  expect(rows('notes')[0]).toMatchObject({ value: made.design.strings.notes[0], unit: '' });
  expect(rows('setbacks')[0], 'left blank').toMatchObject({ value: null, typed: '' });
  expect(row('pins.rowGap'), 'one row of pins has no gap between rows').toBeUndefined();
});

test.each(STARTER_FILES)('every value of $name is a number, words or nothing, each path once', ({ json }) => {
  const table = dimensionTable(acceptDesign(json));
  expect(new Set(table.map(({ path }) => path)).size).toBe(table.length);
  const csv = dimensionCsv(table);
  expect(csv).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  expect(csv.split('\r\n')).toHaveLength(table.length + 2);
  expect(JSON.parse(dimensionJson('x', table))).toEqual({ name: 'x', dimensions: table });
});
