import { describe, expect, test } from 'vitest';
import { shapeFigures } from '../../src/app/figures/shapeFigures.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import type { DesignText } from '../../src/design/design.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { designText } from '../support/change.ts';

type Changes = { readonly [G in keyof DesignText]?: Partial<DesignText[G] & object> };

/** Figures by their label, of the initial design with some fields changed. */
function figures(changes: Changes = {}): Record<string, string> {
  const base = designText();
  const changed = Object.entries(changes).map(([group, fields]) => [
    group,
    { ...(base[group as keyof DesignText] as object), ...(fields as object) },
  ]);
  const { design, curves } = acceptDesign({ ...base, ...Object.fromEntries(changed) });
  return Object.fromEntries(shapeFigures(design, curves).map(({ label, value }) => [label, value]));
}

test('the crown is the fretboard’s, carried on along its cone: 12 → 16 in at fret 20 is 17.839 in (derived)', () => {
  expect(figures()['Crown radius']).toBe('406.4');
  const conical = figures({
    guitar: {
      scale: 645.16,
      fretboard: 'conical',
      fretboardRadius: '12 in',
      fretboardRadiusAtFret: '16 in',
      fretboardFret: 20,
    },
    saddle: { setback: 0 },
  });
  expect(conical['Crown radius']).toBe((17.83925 * 25.4).toFixed(1));
  expect(figures({ top: { crown: 'set', crownRadius: 500 } })['Crown radius']).toBe('500.0');
});

test('the glue face falls by the sagitta: 155 mm on 28 ft .35189, on 25 ft .39412, on 15 ft .65690 (derived)', () => {
  const fall = (soundboardRadius: string) =>
    figures({ guitar: { soundboardRadius }, footprint: { length: 155 } })['Glue face falls'];
  expect(fall('28 ft')).toBe('0.35');
  expect(fall('25 ft')).toBe('0.39');
  expect(fall('15 ft')).toBe('0.66');
  expect(figures({ guitar: { soundboard: 'flat' } })).toMatchObject({
    'Glue face falls': '0.00',
    'Top at the tips': '3.00',
  });
});

describe('wood about the slot, on a flat underside (derived)', () => {
  const flat = { guitar: { soundboard: 'flat' } } as const;

  test('a flat floor leaves thickness less depth everywhere', () => {
    expect(figures(flat)['Wood under the slot']).toBe('4.00');
  });

  test('a floor that follows the crown is thinnest at the slot’s ends', () => {
    // 406.4 − √(406.4² − 37²) = 1.688
    expect(figures({ ...flat, saddle: { floor: 'parallel' } })['Wood under the slot']).toBe(
      (4 - 1.688).toFixed(2),
    );
  });

  test('a tilted slot is less deep straight down, but its front corner reaches lower', () => {
    const t = (10 * Math.PI) / 180;
    const left = 9.5 - 5.5 * Math.cos(t) - 1.6 * Math.sin(t);
    expect(figures({ ...flat, saddle: { tilt: 10 } })['Wood under the slot']).toBe(left.toFixed(2));
  });

  test('a square slot keeps its place behind the front edge less half its width', () => {
    expect(figures({ ...flat, saddle: { angle: 0 } })['Wood round the slot']).toBe((11 - 1.6).toFixed(2));
  });

  test('a slot that runs out has no wood round it to name', () => {
    expect(figures({ ...flat, saddle: { ends: 'open', depth: 3.5 } })['Wood round the slot']).toBeUndefined();
  });
});

test('saddle and slot are sums of what was set', () => {
  expect(figures()).toMatchObject({ 'Slot, nut to middle': '648.90', 'Saddle height': '8.70' });
});

describe('pin holes', () => {
  const reamed = (changes: Changes) => figures(changes)['Reamed, at the glue face'];

  test('each hole is reamed from its own surface: on a crown of 406.4, six pins 57 mm apart (derived)', () => {
    // tops at 5.7, 17.1 and 28.5 mm: 9 − x²/(R + √(R² − x²)) = 8.960, 8.640, 7.999; d = 5.6 − 2·tan 2.5°·that
    const flat = { guitar: { soundboard: 'flat' }, top: { thickness: 9 }, pins: { drill: 4.5 } } as const;
    expect(reamed(flat)).toBe('4.82 to 4.90');
    // a dome of 15 ft lies lower there by 0.022 … 0.107 mm: the holes are deeper, hence narrower
    expect(reamed({ ...flat, guitar: { soundboardRadius: '15 ft' } })).toBe('4.82 to 4.89');
    expect(reamed({ ...flat, top: { thickness: 9, crown: 'set', crownRadius: 5000 } })).toBe('4.81 to 4.82');
  });

  test('no hole is less than its drill, and an untapered one has no such figure', () => {
    expect(reamed({ pins: { taper: 8 } })).toBe('4.76');
    expect(reamed({ pins: { taper: 0 } })).toBeUndefined();
  });

  test('the countersink is told by its diameter', () => {
    expect(figures()['Countersink to']).toBe('Ø 6.60');
    expect(figures({ pins: { bevel: 'none' } })['Countersink to']).toBeUndefined();
  });

  test('reaming takes the inside of the bevel', () => {
    // as drilled (6.6 − 4.7625)/2; reamed, the cone of 45° meets the taper where 3.3 − w = 2.8 − w·tan 2.5°
    const w = 0.5 / (1 - Math.tan((2.5 * Math.PI) / 180));
    expect(figures()['Bevel’s width']).toBe(`${((6.6 - 4.7625) / 2).toFixed(2)}, reamed ${w.toFixed(2)}`);
    expect(figures({ pins: { bevel: 'none' } })['Bevel’s width']).toBeUndefined();
  });
});

test('what is solved and what is set by hand is said as it is', () => {
  const sources = (text: DesignText) => {
    const { design, curves } = acceptDesign(text);
    return Object.fromEntries(shapeFigures(design, curves).map(({ label, source }) => [label, source]));
  };
  expect(sources(initialDesign())).toMatchObject({
    'Slot, nut to middle': 'The set-back is solved from the strings.',
    'Saddle height': 'The depth is solved so that enough of the saddle stands in the wood.',
  });
  expect(sources(designText())).toMatchObject({
    'Slot, nut to middle': 'The set-back is set by hand.',
    'Saddle height': 'The depth is set by hand.',
  });
});
