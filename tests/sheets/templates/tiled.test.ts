import { expect, test } from 'vitest';
import { chainLength } from '../../../models/curves/chain.ts';
import { pointAt } from '../../../models/curves/segment.ts';
import { inkLines } from '../../../src/sheets/paper/inkLines.ts';
import type { Paper } from '../../../src/sheets/sheet.ts';
import { drillingTemplate } from '../../../src/sheets/templates/drillingTemplate.ts';
import { templateContents } from '../../../src/sheets/templates/templateContents.ts';
import { tiled } from '../../../src/sheets/templates/tiled.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { strokes } from '../../support/inkOf.ts';
import { starters } from '../../support/starters.ts';

const size = { width: 90, height: 60 };

test('what goes on one sheet stays whole', () => {
  for (const accepted of starters.values()) {
    const art = drillingTemplate(accepted, 'mm', dejaVu);
    const [only, ...others] = tiled(art, { width: 300, height: 300 }, dejaVu);
    expect(others).toEqual([]);
    expect(only?.inks).toBe(art.inks);
  }
});

test('every part keeps to its size, and together they hold all of every line and text', () => {
  for (const [name, accepted] of starters) {
    const art = drillingTemplate(accepted, 'mm', dejaVu);
    const tiles = tiled(art, size, dejaVu);
    expect(tiles.length, name).toBeGreaterThan(2);
    for (const { box, inks } of tiles) {
      expect(box.right - box.left, name).toBeLessThanOrEqual(size.width + 1e-9);
      expect(box.top - box.bottom, name).toBeLessThanOrEqual(size.height + 1e-9);
      for (const [x, y] of inks.flatMap((ink) => inkLines(ink).flat())) {
        expect(x, name).toBeGreaterThan(box.left - 0.01);
        expect(x, name).toBeLessThan(box.right + 0.01);
        expect(y, name).toBeGreaterThan(box.bottom - 0.01);
        expect(y, name).toBeLessThan(box.top + 0.01);
      }
    }
    // any place on the outline lies on a line of every part whose window holds it
    const parts = tiles.map((tile) => ({
      tile,
      lines: strokes(tile, 'outline').flatMap((ink) => inkLines(ink)),
    }));
    for (const piece of accepted.curves.outline) {
      for (const t of [0.1, 0.37, 0.5, 0.81]) {
        const [x, y] = pointAt(piece, t);
        const homes = parts.filter(
          ({ tile: { box } }) => x > box.left && x < box.right && y > box.bottom && y < box.top,
        );
        expect(homes.length, name).toBeGreaterThan(0);
        for (const { lines } of homes) {
          const off = Math.min(...lines.map(([a, b]) => gap([x, y], a, b)));
          expect(off, `${name}: (${x}, ${y})`).toBeLessThan(0.03);
        }
      }
    }
    const texts = (inks: typeof art.inks) =>
      inks.flatMap((ink) => (ink.kind === 'text' && !ink.text.startsWith('part ') ? [ink.text] : [])).sort();
    expect(texts(tiles.flatMap(({ inks }) => inks)), name).toEqual(texts(art.inks));
  }
});

test('neighbours carry the same marks to lay on each other', () => {
  const [accepted] = starters.values();
  if (!accepted) throw new Error('no starter');
  const tiles = tiled(drillingTemplate(accepted, 'mm', dejaVu), { width: 120, height: 400 }, dejaVu);
  const diamonds = tiles.map((tile) =>
    strokes(tile, 'marks')
      .filter(({ closed, fill, chain }) => closed && !fill && chain.length === 4)
      .map(({ chain }) => JSON.stringify(chain)),
  );
  for (const [i, marks] of diamonds.slice(1).entries()) {
    const shared = marks.filter((mark) => diamonds[i]?.includes(mark));
    expect(shared, `parts ${i + 1} and ${i + 2}`).toHaveLength(2);
  }
});

test('on a narrow paper a template comes on several sheets, full size, each with the bar', () => {
  const [accepted] = starters.values();
  if (!accepted) throw new Error('no starter');
  const narrow: Paper = { name: 'A4', width: 170, height: 210 };
  const contents = templateContents(drillingTemplate(accepted, 'mm', dejaVu), narrow, dejaVu);
  expect(contents.map(({ id }) => id)).toEqual(['drilling-1', 'drilling-2']);
  for (const { scale, inks } of contents) {
    expect(scale).toBe(1);
    const bars = strokes({ inks }, 'marks').filter(({ chain }) => Math.abs(chainLength(chain) - 100) < 1e-9);
    expect(bars).toHaveLength(1);
  }
});

function gap([x, y]: readonly [number, number], a: readonly [number, number], b: readonly [number, number]) {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
}
