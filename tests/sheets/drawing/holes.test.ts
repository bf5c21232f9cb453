import { expect, test } from 'vitest';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { drawingSheets } from '../../../src/sheets/drawingSheets.ts';
import { angleText, lengthText } from '../../../src/sheets/lengthText.ts';
import { PAPERS, type Sheet } from '../../../src/sheets/sheet.ts';
import { acrossView } from '../../../src/sheets/views/acrossView.ts';
import { planView } from '../../../src/sheets/views/planView.ts';
import { sectionPin } from '../../../src/sheets/views/sectionPin.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { illegible } from '../../support/legible.ts';
import { starters } from '../../support/starters.ts';

const reamed = [...starters.values()].filter(({ design: { pins } }) => pins.taper > 0);
const options = (holes: 'drilled' | 'reamed') =>
  ({ paper: PAPERS.A4, units: 'mm', date: '', holes }) as const;
const texts = (sheets: readonly Sheet[]) =>
  sheets.flatMap(({ inks }) => inks.flatMap((ink) => (ink.kind === 'text' ? [ink.text] : [])));

test('as reamed the drawing says mouth and taper and how, as drilled that nobody reams; both are legible', () => {
  expect(reamed.length).toBeGreaterThan(2);
  for (const accepted of reamed) {
    const { pins, guitar, strings } = accepted.design;
    const drawn = texts(drawingSheets(accepted, dejaVu, options('drilled')));
    const sheets = drawingSheets(accepted, dejaVu, options('reamed'));
    const all = texts(sheets);
    const taper = `${strings.count}× ⌀${lengthText(pins.mouth, 'mm')} ±0.1 taper ${angleText(pins.taper)}`;
    expect(
      all.filter((one) => one === taper),
      guitar.name,
    ).toHaveLength(1);
    expect(all.join('\n'), guitar.name).toContain('Holes as reamed');
    expect(all.join('\n'), guitar.name).not.toMatch(/left so|as drilled[:.]/);
    expect(drawn, guitar.name).not.toContain(taper);
    expect(drawn.join(' '), guitar.name).toMatch(/Holes as drilled: drilled through and left so/);
    for (const sheet of sheets) expect(illegible(sheet, dejaVu), `${guitar.name}, as reamed`).toEqual([]);
  }
});

test('as reamed it draws the taper: the section’s and the plan’s holes are those of the reamed wood', () => {
  for (const { curves, design } of reamed) {
    const pin = sectionPin(curves);
    const [x, y] = pin.at;
    const { mouth, taper, drill } = design.pins;
    // derived: a cone about the axis, as wide as the mouth at the top
    const at = (z: number) =>
      Math.max(drill, mouth - 2 * (pin.top - z) * Math.tan((taper * Math.PI) / 360)) / 2;
    const z = pin.top - 2.5;
    const sides = acrossView(curves, pin, 'reamed').pieces.flatMap(({ outer }) =>
      outer.flatMap(([u, v], i) => {
        const [p, q] = outer[(i + 1) % outer.length] ?? [u, v];
        return v > z === q > z ? [] : [u + ((z - v) / (q - v)) * (p - u) - y];
      }),
    );
    const nearest = Math.min(...sides.filter((s) => s > 0));
    expect(nearest, `${design.guitar.name}: the hole 2.5 mm under the top`).toBeCloseTo(at(z), 2);
    const bottom = undersideHeight(curves.underside, x, y);
    const radii = (holes: 'drilled' | 'reamed') =>
      planView(curves, holes).inks.flatMap((ink) =>
        ink.kind === 'circle' && ink.centre === pin.at ? [ink.radius] : [],
      );
    expect(Math.min(...radii('reamed')), design.guitar.name).toBeCloseTo(at(bottom), 6);
    expect(Math.min(...radii('drilled')), design.guitar.name).toBeCloseTo(drill / 2, 6);
    // the wood agrees
    const wood = surfaceOf(curves, 'reamed')
      .columns(x, y + at(z) - 0.01)
      .some(([a, b]) => z > a && z < b);
    expect(wood, design.guitar.name).toBe(false);
  }
});
