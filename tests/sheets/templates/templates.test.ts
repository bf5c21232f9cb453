import { expect, test } from 'vitest';
import { chainLength, enclosedArea } from '../../../models/curves/chain.ts';
import { elevationOutline } from '../../../models/curves/elevationOutline.ts';
import type { Arc } from '../../../models/curves/segment.ts';
import { heightOn } from '../../../models/curves/topHeight.ts';
import { jobOf, slotOn } from '../../../src/making/job.ts';
import { usualWorkshop } from '../../../src/making/workshop.ts';
import { allSheets } from '../../../src/sheets/allSheets.ts';
import { PAPERS, type Sheet } from '../../../src/sheets/sheet.ts';
import { saddleTemplate } from '../../../src/sheets/templates/saddleTemplate.ts';
import { fitReport } from '../../../src/trade/fit/fitReport.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { greatest, measure, strokes } from '../../support/inkOf.ts';
import { starter, starters } from '../../support/starters.ts';

const papers = new Map(
  [...starters].map(([name, accepted]) => [
    name,
    new Map(
      allSheets(accepted, dejaVu, { paper: PAPERS.A4, units: 'mm', holes: 'drilled', date: '' }).map(
        (sheet) => [sheet.id, sheet],
      ),
    ),
  ]),
);

function sheetOf(name: string, id: string): Sheet {
  const found = papers.get(name)?.get(id);
  if (!found) throw new Error(`${name} has no sheet ${id}`);
  return found;
}

test('each starter has all seven papers, each on one sheet', () => {
  for (const [name, sheets] of papers)
    expect([...sheets.keys()], name).toEqual([
      'views',
      'sections',
      'outline',
      'drilling',
      'front',
      'saddle',
      'gauges',
    ]);
});

test('outline and elevation are the curves, full size', () => {
  for (const [name, { curves }] of starters) {
    const outline = measure(greatest(sheetOf(name, 'outline'), 'outline'));
    expect(outline.area, name).toBeCloseTo(enclosedArea(curves.outline), 6);
    expect(outline.length, name).toBeCloseTo(chainLength(curves.outline), 6);
    const front = measure(greatest(sheetOf(name, 'front'), 'profile'));
    expect(front.area, name).toBeCloseTo(enclosedArea(elevationOutline(curves).body), 6);
  }
});

test('pins stand on the drilling template as on the part, from the outline’s own places', () => {
  for (const [name, { curves }] of starters) {
    const sheet = sheetOf(name, 'drilling');
    const moved = greatest(sheet, 'outline').chain[0]?.from;
    const own = curves.outline[0]?.from;
    if (!moved || !own) throw new Error('no outline');
    const rings = sheet.inks.flatMap((ink) => (ink.kind === 'circle' && ink.layer === 'pins' ? [ink] : []));
    expect(rings, name).toHaveLength(curves.pins.length);
    rings.forEach(({ centre }, i) => {
      const at = curves.pins[i]?.at ?? [0, 0];
      expect(centre[0] - moved[0], name).toBeCloseTo(at[0] - own[0], 9);
      expect(centre[1] - moved[1], name).toBeCloseTo(at[1] - own[1], 9);
    });
  }
});

test('a leaning slot is drawn level, where its crosses are, and the note says how it lies on a thicker blank', () => {
  const leaning = [...starters].filter(([, { curves }]) => curves.slot.tilt > 0);
  expect(leaning.length).toBeGreaterThan(0);
  for (const [name, accepted] of leaning) {
    const sheet = sheetOf(name, 'drilling');
    const { slot, profile, outline } = accepted.curves;
    const ink = greatest(sheet, 'slot');
    // derived: a level plane cuts a leaning slot as wide as 1/cos of its lean
    const wide = enclosedArea(slot.plan) / Math.cos(slot.tilt);
    expect(measure(ink).area / wide, name).toBeCloseTo(1, 3);
    // on the crown its ends would lie further front, and its middle before the origin by some hundredths
    const points = ink.chain.map(({ from }) => from);
    const [front, back] = [Math.max(...points.map(([, y]) => y)), Math.min(...points.map(([, y]) => y))];
    const moved = greatest(sheet, 'outline').chain[0]?.from ?? [0, 0];
    const origin = moved[1] - (outline[0]?.from[1] ?? 0);
    expect((front + back) / 2 - origin, name).toBeCloseTo(0, 3);
    const job = jobOf(accepted, usualWorkshop(accepted.design.saddle.slotWidth));
    const [low, high] = [0, 1].map((over) => slotOn(job, 0, profile.thickness + over));
    const further = ((low?.[1] ?? 0) - (high?.[1] ?? 0)) / Math.cos(slot.angle);
    const said = sheet.inks.flatMap((one) => (one.kind === 'text' ? [one.text] : [])).join(' ');
    expect(said.replace(/\s+/g, ' '), name).toContain(`by ${further.toFixed(3)} of what it is thicker`);
  }
});

test('each full-size sheet has a bar of 100 mm and says so', () => {
  for (const [name, sheets] of papers) {
    for (const sheet of sheets.values()) {
      const bars = strokes(sheet, 'marks').filter(
        ({ chain }) =>
          chain.length === 1 &&
          Math.abs(chainLength(chain) - 100) < 1e-9 &&
          chain[0]?.from[1] === chain[0]?.to[1],
      );
      expect(bars, `${name} ${sheet.id}`).toHaveLength(1);
      const texts = sheet.inks.flatMap((ink) => (ink.kind === 'text' ? [ink.text] : []));
      expect(
        texts.some((text) => text.startsWith('100 mm')),
        `${name} ${sheet.id}`,
      ).toBe(true);
      expect(texts, `${name} ${sheet.id}`).toContain(accepted(name));
    }
  }
});

const accepted = (name: string) => starter(name).design.guitar.name;

test('registration crosses stand as far apart as they say', () => {
  for (const [name, sheets] of papers) {
    for (const id of ['outline', 'drilling', 'front', 'saddle', 'gauges']) {
      const sheet = sheets.get(id);
      if (!sheet) throw new Error(`${name} has no ${id}`);
      const said = sheet.inks.flatMap((ink) => {
        const found = ink.kind === 'text' ? /^crosses (\d+) × (\d+) mm apart$/.exec(ink.text) : null;
        return found ? [found.slice(1).map(Number)] : [];
      });
      const middles = strokes(sheet, 'marks')
        .filter(({ chain }) => chain.length === 1 && Math.abs(chainLength(chain) - 6) < 1e-9)
        .map(({ chain }) => chain[0])
        .map(
          (s) =>
            [((s?.from[0] ?? 0) + (s?.to[0] ?? 0)) / 2, ((s?.from[1] ?? 0) + (s?.to[1] ?? 0)) / 2] as const,
        );
      expect(middles, `${name} ${id}`).toHaveLength(8);
      const span = (axis: 0 | 1) =>
        Math.max(...middles.map((p) => p[axis])) - Math.min(...middles.map((p) => p[axis]));
      expect(said, `${name} ${id}`).toHaveLength(1);
      expect(span(0), `${name} ${id}`).toBeCloseTo(said[0]?.[0] ?? 0, 9);
      expect(span(1), `${name} ${id}`).toBeCloseTo(said[0]?.[1] ?? 0, 9);
    }
  }
});

test('gauges are arcs of the radii that they gauge', () => {
  for (const [name, { curves }] of starters) {
    const radii = strokes(sheetOf(name, 'gauges'), 'profile')
      .flatMap(({ chain }) => chain)
      .filter((s): s is Arc => s.kind === 'arc')
      .map((s) => s.radius);
    const wanted = [
      curves.profile.crownRadius,
      ...(curves.underside.shape === 'flat' ? [] : [curves.underside.radius]),
    ];
    expect(radii.length, name).toBe(wanted.length);
    radii.forEach((r, i) => {
      expect(r, name).toBeCloseTo(wanted[i] ?? 0, 6);
    });
  }
});

test('the saddle’s top stands under each string as high as the saddle does there, leaning or not', () => {
  let leaning = 0;
  for (const design of [...starters.values(), ...acceptedDesigns(40, 4).accepted]) {
    // under a flat floor the saddle is as high as its top stands over the floor at the middle
    if (design.curves.slot.floorRadius !== undefined) continue;
    const { saddle } = fitReport(design.design, design.curves, design.fit);
    const art = saddleTemplate(design, 'mm');
    expect(art === undefined, design.design.guitar.name).toBe(saddle.top === undefined);
    const top = saddle.top;
    if (!top) continue;
    if (design.curves.slot.tilt > 0) leaning++;
    const cos = Math.cos(design.curves.slot.angle);
    saddle.stands.forEach(({ height }, i) => {
      const x = design.fit.strings[i]?.x ?? 0;
      expect(heightOn(top, x / cos), design.design.guitar.name).toBeCloseTo(height, 6);
    });
  }
  expect(leaning).toBeGreaterThan(3);
});
