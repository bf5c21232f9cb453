import { describe, expect, test } from 'vitest';
import { STARTER_FILES } from '../../src/cli/starterFiles.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { groundText } from '../../src/making/groundText.ts';
import { isMeasured } from '../../src/making/isMeasured.ts';
import { jobByHand } from '../../src/making/jobByHand.ts';
import { jobSheet } from '../../src/making/jobSheet.ts';
import { readWorkshop, usualWorkshop } from '../../src/making/workshop.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { fingerprint } from '../../src/sheets/fingerprint.ts';
import { PAPERS } from '../../src/sheets/sheet.ts';
import { templateTitles } from '../../src/sheets/templates/templateTitles.ts';
import { CAUTIONS } from '../../src/trade/cautions.ts';
import { designText } from '../support/change.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { pageFaults, pageText } from '../support/pageFaults.ts';

const options = { paper: PAPERS.A4, date: '2031-05-17' };
const made = (json: unknown, workshop?: object, paper: (typeof PAPERS)['A4' | 'Letter'] = PAPERS.A4) => {
  const accepted = acceptDesign(json);
  const here = workshop ? readWorkshop(workshop) : usualWorkshop(accepted.design.saddle.slotWidth);
  const steps = jobByHand(accepted, here);
  return { accepted, steps, pages: jobSheet(steps, accepted, dejaVu, { ...options, paper }) };
};
const flat = (text: string) => text.replace(/\s+/g, ' ');

describe('the job by hand on paper', () => {
  test.each(STARTER_FILES.map(({ name, json }) => [name, json] as const))(
    '%s: nothing overlaps or leaves the page, A4 and Letter, by machine and by hand',
    (_, json) => {
      const hand = { drill: 'hand', slot: 'hand', outline: 'hand', reamBy: 'depth' };
      for (const { pages } of [made(json), made(json, hand, PAPERS.Letter)]) {
        expect(pages.flatMap((sheet) => pageFaults(sheet, dejaVu))).toEqual([]);
        expect(pages.length).toBeLessThanOrEqual(9);
      }
    },
  );

  test('the same of random designs, whatever they are called', () => {
    for (const { text } of acceptedDesigns(8, 23).accepted) {
      const { pages } = made(text);
      expect(
        pages.flatMap((sheet) => pageFaults(sheet, dejaVu)),
        text.guitar.name as string,
      ).toEqual([]);
    }
    const long = made(designText({ 'guitar.name': `a/b\\"c" 🪵 ${'Long name '.repeat(28)}` }));
    expect(long.pages.flatMap((sheet) => pageFaults(sheet, dejaVu))).toEqual([]);
  });

  test('every page says whose it is, and which of how many', () => {
    const { pages, accepted } = made(designText({ 'guitar.name': 'Häger “½”' }));
    for (const [i, sheet] of pages.entries()) {
      const text = pageText(sheet);
      expect(text).toContain('Job by hand: Häger “½”');
      expect(text).toContain(`Design ${fingerprint(accepted.text)}`);
      expect(text).toContain('2031-05-17');
      expect(text).toContain(`Page ${i + 1} of ${pages.length}`);
      expect(sheet.paper).toEqual({ name: 'A4', width: 210, height: 297 });
    }
  });

  test('every step is there with a box to tick, its settings and a box for each measured value', () => {
    const { pages, steps } = made(designText({ 'saddle.tilt': 5 }));
    const text = flat(pages.map(pageText).join('\n'));
    for (const [i, step] of steps.entries()) {
      expect(text).toContain(`${i + 1}. ${step.title}`);
      for (const setting of step.settings) {
        expect(text).toContain(setting.label.split(',')[0]);
        expect(text).toContain(groundText(setting));
      }
      for (const line of step.work) expect(text).toContain(line);
    }
    const boxes = pages.flatMap(({ inks }) => inks).filter((ink) => ink.kind === 'line' && ink.closed);
    const measured = steps.map((step) => step.settings.filter((one) => isMeasured(one, step)).length);
    const cautioned = steps.filter(({ cautions }) => cautions.length > 0).length;
    // a box to tick and at least one for what was measured each, one round each caution, and one round them all
    const wanted = steps.length + measured.reduce((sum, n) => sum + Math.max(1, n), 0) + cautioned + 1;
    expect(boxes).toHaveLength(wanted);
  });

  test('the sheet that a step works from is one of the design’s, called on both papers by its own title', () => {
    const accepted = acceptDesign(designText());
    const sheets = allSheets(accepted, dejaVu, { ...options, units: 'mm', holes: 'drilled' });
    const { pages, steps } = made(designText());
    const text = flat(pages.map(pageText).join('\n'));
    const ids = new Set(steps.flatMap(({ template }) => template ?? []));
    expect([...ids].sort()).toEqual(['drilling', 'front', 'gauges', 'outline', 'saddle']);
    for (const id of ids) {
      const sheet = sheets.find((one) => one.id === id);
      expect(sheet, id).toBeDefined();
      expect(text, id).toContain(`Sheet “${sheet?.title}”.`);
      expect(templateTitles[id]).toBe(sheet?.title);
    }
  });

  test('what can hurt stands first, whole, and is named at each step where it can', () => {
    const { pages, steps } = made(designText());
    const [first = ''] = pages.map((page) => flat(pageText(page)));
    for (const id of new Set(steps.flatMap(({ cautions }) => cautions)))
      for (const words of CAUTIONS[id].text.split('. ')) expect(first).toContain(words);
    const text = flat(pages.map(pageText).join('\n'));
    for (const { cautions } of steps.filter((step) => step.cautions.length > 0))
      expect(text).toContain(`Take care: ${cautions.map((id) => CAUTIONS[id].title).join(', ')}.`);
  });
});
