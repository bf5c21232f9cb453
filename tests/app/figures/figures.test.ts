import { describe, expect, test } from 'vitest';
import type { Figure } from '../../../src/app/figures/figure.ts';
import { percent } from '../../../src/app/figures/figure.ts';
import type { Weighed } from '../../../src/app/figures/figuresOf.ts';
import { glueFigures } from '../../../src/app/figures/glueFigures.ts';
import { loadColumns } from '../../../src/app/figures/loadColumns.ts';
import { loadFigures } from '../../../src/app/figures/loadFigures.ts';
import { massFigures } from '../../../src/app/figures/massFigures.ts';
import { pairsOf } from '../../../src/app/figures/pairs.ts';
import { spreadFigures } from '../../../src/app/figures/spreadFigures.ts';
import { stiffnessFigures } from '../../../src/app/figures/stiffnessFigures.ts';
import { tenthRows } from '../../../src/app/figures/tenthRows.ts';
import { placeOf } from '../../../src/app/store/fieldAt.ts';
import { reportOf } from '../../../src/app/store/reportOf.ts';
import { headlines } from '../../../src/report/headlines.ts';
import { sensitivity } from '../../../src/report/sensitivity.ts';
import { sayGrounds } from '../../../src/trade/formulas.ts';
import type { Changes } from '../../support/change.ts';
import { someFits } from '../fit/fitOf.ts';
import { weighed } from './weighed.ts';

const usual = weighed();

function all(bench: Weighed, reference: Weighed = usual): readonly Figure[] {
  const pairs = pairsOf(reference, bench);
  return [massFigures, stiffnessFigures, glueFigures, loadFigures]
    .flatMap((figures) => figures(bench, pairs))
    .concat(spreadFigures(bench));
}

const columnsOf = (bench: Weighed, reference = usual) =>
  loadColumns(bench.figures.loads, reportOf(bench.accepted), {
    name: 'Plover',
    loads: reference.figures.loads,
  });

const numberOf = (figures: readonly Figure[], label: string) => {
  const figure = figures.find((one) => one.label === label);
  if (!figure) throw new Error(`no figure “${label}” among ${figures.map((one) => one.label).join(', ')}`);
  return Number.parseFloat(figure.value);
};

describe.each(Object.entries({ ...someFits, strung: { 'timber.weighed': 'strung' } }))(
  'every figure of %s',
  (_name, changes: Changes) => {
    const bench = weighed(changes);
    const figures = all(bench);

    test('opens to formula and source, and leads to a field', () => {
      for (const { label, value, formula, source, path } of figures) {
        expect(value, label).not.toMatch(/NaN|undefined|Infinity/);
        expect(formula, label).not.toBe('');
        expect(source, label).toMatch(/Derived here|Common practice|Source|A guess of ours|Your own entry/);
        expect(placeOf(path ?? ''), label).toBeDefined();
      }
      const labels = figures.map(({ label }) => label);
      expect(new Set(labels).size, 'no label twice').toBe(labels.length);
    });

    test('every number by which designs are compared stands there with its share', () => {
      const together = bench.accepted.design.timber.weighed === 'strung';
      for (const { id, label, value } of headlines(bench.figures)) {
        const shown = figures.find((one) => one.label === label);
        if (id === 'mass-together') {
          // the usual bridge weighs its wood alone: nothing to be a share of
          expect(shown !== undefined, label).toBe(together);
          expect(shown?.share).toBeUndefined();
          continue;
        }
        const other = headlines(usual.figures).find((one) => one.id === id);
        expect(shown?.share, label).toBeCloseTo(value / (other?.value ?? 0), 9);
      }
    });

    test('loads by string: a number or a dash, each with formula and source', () => {
      const { saddle, wood } = columnsOf(bench);
      for (const { key, name, values, sourced, path } of [...saddle, ...wood]) {
        expect(values, name).toHaveLength(bench.accepted.fit.strings.length);
        expect(placeOf(path), key).toBeDefined();
        for (const [i, value] of values.entries()) {
          expect(value, `${name}, string ${i + 1}`).toMatch(/^[−\d.]+$|^–$/);
          expect(sourced(i).source).toMatch(/Derived here/);
          if (value === '–') expect(sourced(i).formula).toContain('no load, since');
        }
      }
    });
  },
);

test('inertia is that of the wood about its centre: a heavier timber has more, in proportion', () => {
  const heavy = spreadFigures(weighed({ 'timber.density': 849 * 1.2 }));
  const light = spreadFigures(usual);
  for (const label of [
    'Inertia about its length',
    'Inertia about the strings’ line',
    'Inertia about the upright',
  ])
    expect(numberOf(heavy, label) / numberOf(light, label), label).toBeCloseTo(1.2, 2);
  // a thin plate: what it has about the upright is the sum of the other two, but for its thickness (derived)
  const sum =
    numberOf(light, 'Inertia about its length') + numberOf(light, 'Inertia about the strings’ line');
  expect(sum).toBeGreaterThan(numberOf(light, 'Inertia about the upright'));
  expect(sum / numberOf(light, 'Inertia about the upright')).toBeLessThan(1.03);
  // of a bar of 26 g and 153 mm: m·l²/12 = 50.7 kg·mm² (derived); a bridge has its mass nearer to its middle
  expect(numberOf(light, 'Inertia about the upright')).toBeGreaterThan(20);
  expect(numberOf(light, 'Inertia about the upright')).toBeLessThan(50.7);
});

test('saddle and pins are listed only where they are weighed, and make up the sum', () => {
  const labels = (bench: Weighed) => all(bench).map(({ label }) => label);
  expect(labels(usual)).not.toContain('Pins');
  const strung = weighed({ 'timber.weighed': 'strung', 'timber.pinMass': 0.9 });
  const both = pairsOf(weighed({ 'timber.weighed': 'strung' }), strung).get('mass-together');
  expect(both?.share, 'compared where both weigh the same').toBeCloseTo(1 + 1.2 / (both?.a ?? 0), 6);
  const figures = all(strung);
  expect(numberOf(figures, 'Pins')).toBeCloseTo(5.4, 6);
  expect(
    numberOf(figures, 'Mass, as reamed') + numberOf(figures, 'Saddle') + numberOf(figures, 'Pins'),
  ).toBeCloseTo(numberOf(figures, 'Mass with what else is weighed'), 1);
});

test('where density and stiffness come from stands in every figure that they went into', () => {
  const opened = (changes: Changes, label: string) => {
    const figure = all(weighed(changes)).find((one) => one.label.startsWith(label));
    return `${figure?.formula} ${figure?.source}`;
  };
  const cocobolo = { 'timber.name': 'Cocobolo', 'timber.density': 1105 };
  for (const label of ['Stiffness in the middle', 'Brace it equals', 'Gives under', 'Twists by']) {
    expect(opened({}, label), label).toContain('E 12.27 GPa (Chudnoff');
    expect(opened(cocobolo, label), label).toContain('E 12.27 GPa (your own; no source was found)');
    expect(opened({ 'timber.stiffness': 13 }, label), label).toContain('E 13 GPa (your own entry)');
  }
  expect(opened({}, 'Mass, as drilled')).toContain('density 849 kg/m³ (Chudnoff');
  expect(opened({ 'timber.stiffness': 13 }, 'Mass, as drilled')).toContain('density 849 kg/m³ (Chudnoff');
  expect(opened({ 'timber.density': 850 }, 'Mass, as drilled')).toContain('(your own entry)');
  expect(opened({}, 'Brace it equals')).toContain('Sitka spruce, USDA Wood Handbook, from memory');
  expect(opened({ 'timber.braceStiffness': 9 }, 'Brace it equals')).not.toContain('Sitka');
});

test('what is no more than an estimate says so beside its number, which has few decimals', () => {
  const twist = all(usual).find(({ label }) => label.startsWith('Twists by'));
  expect(twist?.note).toBe('an estimate');
  expect(twist?.value).toMatch(/^\d+\.\d\d°$/);
  expect(all(usual).find(({ label }) => label.startsWith('On a pin’s hole'))?.note).toBe('an estimate');
  for (const { id, estimate, formula } of headlines(usual.figures))
    expect(estimate, id).toBe(sayGrounds(formula).includes('an estimate'));
});

test('a default that nobody entered is called a guess, an entry one’s own', () => {
  const source = (changes: Changes, label: string) =>
    all(weighed({ 'timber.weighed': 'strung', ...changes })).find((one) => one.label === label)?.source;
  expect(source({}, 'Saddle')).toMatch(/^A guess of ours.*weigh/);
  expect(source({}, 'Pins')).toMatch(/^A guess of ours.*weigh/);
  expect(source({ 'timber.saddleDensity': 1850 }, 'Saddle')).toBe('Your own entry.');
  expect(source({ 'timber.pinMass': 0.9 }, 'Pins')).toBe('Your own entry.');
});

test('a string that the saddle doesn’t bear has a dash and its reason, the others their loads', () => {
  // a top flatter than the fretboard: the outer strings would lie under it
  const bench = weighed({
    'top.thicknessBy': 'set',
    'top.thickness': 12.8,
    'top.crown': 'set',
    'top.crownRadius': 2000,
    'saddle.depthBy': 'set',
  });
  const [onSaddle] = columnsOf(bench).saddle;
  const { stands } = reportOf(bench.accepted).saddle;
  expect(onSaddle?.values.map((value) => value === '–')).toEqual(stands.map(({ showing }) => showing < 0));
  expect(onSaddle?.values).toContain('–');
  const i = onSaddle?.values.indexOf('–') ?? 0;
  expect(onSaddle?.sourced(i).formula).toMatch(/no load, since its crown lies under the bridge’s top/);
  expect(onSaddle?.values.find((value) => value !== '–')).toMatch(/^\d+\.\d$/);
});

test('a load opens to its share of the reference’s', () => {
  const { saddle } = columnsOf(weighed({ 'pins.behindSlot': 16 }));
  expect(saddle[0]?.sourced(0).formula).toMatch(/; \d+(\.\d)? % of that of Plover/);
});

test('what a tenth does: more thickness is stiffer and heavier, a deeper slot lighter; rows lead to fields', () => {
  const { design, curves } = usual.accepted;
  const rows = tenthRows(sensitivity(design, curves));
  const row = (path: string) => rows.find((one) => one.path === path);
  const thickness = row('top.thickness');
  expect(thickness?.label).toBe('Top, thickness at the centre');
  expect(thickness?.now).toBe(design.top.thickness.toFixed(2));
  expect(thickness?.grams).toMatch(/^\+0\.\d{3}$/);
  // I goes as the cube of the height: 3 times 0.1 in 9.14, within the slot's and the holes' say (derived)
  expect(Number(thickness?.percent)).toBeGreaterThan(2.8);
  expect(Number(thickness?.percent)).toBeLessThan(3.9);
  expect(row('saddle.depth')?.grams).toMatch(/^−0\.\d{3}$/);
  for (const { path } of rows) expect(placeOf(path), path).toBeDefined();
});

test('shares are told in whole hundredths, near one in tenths', () => {
  expect(percent(1)).toBe('100 %');
  expect(percent(1.0374)).toBe('104 %');
  expect(percent(1.003)).toBe('100.3 %');
  expect(percent(0.62)).toBe('62 %');
  expect(percent(1.0001)).toBe('100 %');
});
