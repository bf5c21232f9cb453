import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { PAPERS } from '../../src/sheets/sheet.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { illegible } from '../support/legible.ts';
import { starter, starters } from '../support/starters.ts';

const combinations = (['A4', 'Letter'] as const).flatMap((paper) =>
  (['mm', 'in'] as const).map((units) => ({
    paper: PAPERS[paper],
    units,
    holes: 'drilled' as const,
    date: '2026-11-25',
  })),
);
const random = acceptedDesigns(12, 5).accepted;

describe('every paper can be read: no text over another or over a thick line, nothing outside the frame', () => {
  const designs = [...starters, ...random.map((design, i) => [`random design ${i}`, design] as const)];
  test.each(designs)('%s', { timeout: 120_000 }, (name, accepted) => {
    // a random design on A4 in mm and on Letter in inches: the other two add little but time
    const tried = name.startsWith('random')
      ? combinations.filter(({ paper, units }) => (paper.name === 'A4') === (units === 'mm'))
      : combinations;
    const found = tried.flatMap((options) =>
      allSheets(accepted, dejaVu, options).flatMap((sheet) =>
        illegible(sheet, dejaVu).map((what) => `${options.units}, ${what}`),
      ),
    );
    expect(found).toEqual([]);
  });

  test.each([
    ['slashes and quotes', 'A/B\\C "D" ‘E’ <F> & G'],
    ['an emoji', 'Bridge 🎸 for 👨‍👩‍👧'],
    ['300 characters', 'Long name '.repeat(30)],
    ['300 without a space', 'W'.repeat(300)],
  ])('a name with %s', (_, name) => {
    const { text } = starter('Plover');
    const accepted = acceptDesign({
      ...text,
      guitar: { ...text.guitar, name },
      timber: { ...text.timber, name: name.slice(0, 120) },
    });
    const [options] = combinations;
    if (!options) throw new Error('no paper');
    const found = allSheets(accepted, dejaVu, options).flatMap((sheet) => illegible(sheet, dejaVu));
    expect(found).toEqual([]);
  });
});

test('the longest bridge: the views at half size and saying so, its longest gauge in two parts', {
  timeout: 120_000,
}, () => {
  const { text } = starter('Dunlin');
  const accepted = acceptDesign({
    ...text,
    footprint: { ...text.footprint, length: 230, depthCentre: 75, depthWing: 60, slotBehindFront: 30 },
  });
  const sheets = allSheets(accepted, dejaVu, {
    paper: PAPERS.Letter,
    units: 'mm',
    holes: 'drilled',
    date: '',
  });
  expect(sheets.flatMap((sheet) => illegible(sheet, dejaVu))).toEqual([]);
  const [views] = sheets;
  expect(views?.scale).toBe(0.5);
  expect(views?.inks.some((ink) => ink.kind === 'text' && ink.text === '1:2')).toBe(true);
  expect(sheets.map(({ id }) => id).filter((id) => id.startsWith('gauges'))).toEqual([
    'gauges-1',
    'gauges-2',
  ]);
});

test('the check finds a text over another, over an outline and outside the frame', () => {
  const [sheet] = allSheets(starter('Plover'), dejaVu, {
    paper: PAPERS.A4,
    units: 'mm',
    holes: 'drilled',
    date: '',
  });
  if (!sheet) throw new Error('no sheet');
  const text = sheet.inks.find((ink) => ink.kind === 'text' && ink.text === '153');
  const outline = sheet.inks.find(
    (ink) => ink.kind === 'line' && ink.layer === 'outline' && ink.pen === 'outline',
  );
  if (text?.kind !== 'text' || outline?.kind !== 'line') throw new Error('no text or no outline');
  const from = outline.chain[0]?.from ?? [0, 0];
  const spoiled = [text, { ...text, at: from }, { ...text, text: 'far', at: [1, 1] as const }];
  const found = illegible({ ...sheet, inks: [...sheet.inks, ...spoiled] }, dejaVu).join('\n');
  expect(found).toContain('“153” over “153”');
  expect(found).toContain('“153” over a thick line');
  expect(found).toContain('“far” leaves the frame');
});

test('the same design gives the same papers', () => {
  const options = { paper: PAPERS.Letter, units: 'in', holes: 'drilled', date: '2026-11-25' } as const;
  const again = acceptDesign(structuredClone(starter('Bittern').text));
  expect(allSheets(again, dejaVu, options)).toEqual(allSheets(starter('Bittern'), dejaVu, options));
});
