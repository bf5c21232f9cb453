import { describe, expect, test } from 'vitest';
import { barPicture } from '../../../src/app/figures/barPicture.ts';
import { massByPart } from '../../../src/app/figures/massByPart.ts';
import { partRows } from '../../../src/app/figures/partRows.ts';
import { stiffnessPicture } from '../../../src/app/figures/stiffnessPicture.ts';
import { ticks } from '../../../src/app/figures/ticks.ts';
import { WIDTH } from '../../../src/app/picture/mark.ts';
import { someFits } from '../fit/fitOf.ts';
import { extent, placeOf, pointsOf } from '../fit/marks.ts';
import { weighed } from './weighed.ts';

const usual = weighed();

describe.each(
  Object.entries({
    ...someFits,
    'weighed strung': { 'timber.weighed': 'strung' },
    'long, thick and stiff': {
      'footprint.length': 180,
      'top.thicknessBy': 'set',
      'top.thickness': 10.5,
      'timber.stiffness': 24,
    },
  }),
)('the pictures of %s', (_name, changes) => {
  const bench = weighed(changes);
  const plot = stiffnessPicture(bench, usual);
  const bars = massByPart(bench);
  const parts = barPicture(bars);

  test.each(Object.entries({ plot, parts }))(
    '%s: nothing outside its box, no word on another',
    (_, drawn) => {
      const { xs, ys } = extent(drawn);
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(-0.5);
      expect(Math.max(...xs)).toBeLessThanOrEqual(WIDTH + 0.5);
      expect(Math.min(...ys)).toBeGreaterThanOrEqual(-0.5);
      expect(Math.max(...ys)).toBeLessThanOrEqual(drawn.height + 0.5);
      const names = drawn.marks.map(({ name }) => name);
      expect(new Set(names).size, 'names are told apart').toBe(names.length);
      const boxes = drawn.marks.flatMap((mark) => {
        if (mark.kind !== 'word') return [];
        const at = extent({ height: 0, marks: [mark] });
        return [{ name: mark.name, ...at }];
      });
      for (const [i, a] of boxes.entries())
        for (const b of boxes.slice(i + 1)) {
          const apart = (one: readonly number[], other: readonly number[]) =>
            Math.max(...one) <= Math.min(...other) || Math.max(...other) <= Math.min(...one);
          const clear = apart(a.xs, b.xs) || apart(a.ys.map(Math.round), b.ys.map(Math.round));
          expect(clear, `${a.name} and ${b.name}`).toBe(true);
        }
    },
  );

  test('the curve reads back as the stiffness along the bridge, to the axes that are written', () => {
    const [x0] = placeOf(plot, 'x 0');
    const [x50] = placeOf(plot, 'x 50');
    const level = (value: number) => (pointsOf(plot, `level ${value}`)[0] as readonly [number, number])[1];
    const written = plot.marks.flatMap(({ name }) =>
      name.startsWith('level ') ? [Number(name.slice(6))] : [],
    );
    const most = Math.max(...written);
    for (const [line, along] of [
      ['stiffness', bench.figures.bending.along],
      ['reference', usual.figures.bending.along],
    ] as const) {
      const points = pointsOf(plot, line);
      expect(points).toHaveLength(along.length);
      for (const [k, [x, y]] of points.entries()) {
        expect((50 * (x - x0)) / (x50 - x0), `${line}, x`).toBeCloseTo(along[k]?.x ?? 0, 6);
        expect((most * (level(0) - y)) / (level(0) - level(most)), `${line}, E·I`).toBeCloseTo(
          along[k]?.stiffnessNm2 ?? 0,
          6,
        );
      }
    }
    const { curves, design } = bench.accepted;
    const [left, right] = pointsOf(plot, 'block');
    const mm = (x: number) => (50 * (x - x0)) / (x50 - x0);
    expect(mm(right?.[0] ?? 0) - mm(left?.[0] ?? 0), 'the block').toBeCloseTo(design.top.block, 6);
    curves.pins.forEach((pin, i) => {
      expect(mm(placeOf(plot, `pin ${i + 1}`)[0])).toBeCloseTo(pin.at[0], 6);
    });
    const [end] = pointsOf(plot, 'slot').slice(-1);
    expect(mm(end?.[0] ?? 0), 'the slot ends in the block').toBeLessThanOrEqual(design.top.block / 2);
  });

  test('bars are as long as their parts are heavy, and the parts of wood weigh as much as the whole', () => {
    const lengthOf = (name: string) => {
      const [from, to] = pointsOf(parts, `bar ${name}`);
      return (to?.[0] ?? 0) - (from?.[0] ?? 0);
    };
    for (const { name, value } of bars)
      expect(lengthOf(name) / lengthOf('middle block'), name).toBeCloseTo(value / (bars[1]?.value ?? 0), 9);
    const wood = bars.slice(0, 3).reduce((sum, { value }) => sum + value, 0);
    const { mass, bending } = bench.figures;
    const rows = partRows(bending.parts);
    expect(rows.map(({ name, mass: grams }) => `${name} ${grams} g`)).toEqual(
      bars.slice(0, 3).map(({ name, text }) => `${name} ${text}`),
    );
    const give = rows.reduce((sum, row) => sum + Number(row.give), 0);
    expect(Math.abs(give - 100), 'shares of the give, rounded').toBeLessThanOrEqual(1);
    const least = Math.min(...rows.map((row) => Number(row.least)));
    expect(least).toBeCloseTo(Math.min(...bending.along.map(({ stiffnessNm2 }) => stiffnessNm2)), 1);
    expect(Math.abs(wood / mass.reamed - 1), `${wood} of ${mass.reamed} g`).toBeLessThan(1e-3);
    const all = bars.reduce((sum, { value }) => sum + value, 0);
    expect(Math.abs(all / mass.together - 1)).toBeLessThan(1e-3);
  });
});

test('written values are round and reach over the greatest', () => {
  expect(ticks(26.8, 5)).toEqual([0, 10, 20, 30]);
  expect(ticks(43, 5)).toEqual([0, 10, 20, 30, 40, 50]);
  expect(ticks(0.9, 5).map((t) => t.toFixed(1))).toEqual(['0.0', '0.2', '0.4', '0.6', '0.8', '1.0']);
  expect(ticks(400, 5)).toEqual([0, 100, 200, 300, 400]);
});
