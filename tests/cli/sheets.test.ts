import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { fingerprint } from '../../src/sheets/fingerprint.ts';
import { PAPERS } from '../../src/sheets/sheet.ts';
import { designText } from '../support/change.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { hasPoppler, said } from '../support/outsideReaders.ts';
import { fakeIo } from './fakeIo.ts';

let folder: string;
const at = (file: string) => path.join(folder, file);
const plain = designText({ 'guitar.name': 'Plain' });
const wild = designText({ 'guitar.name': `a/b\\c: "d" 🪵 ${'Long name '.repeat(28)}` });

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-sheets-'));
  writeFileSync(at('plain.json'), JSON.stringify(plain));
  writeFileSync(at('wild.json'), JSON.stringify(wild));
  writeFileSync(at('thick.json'), JSON.stringify(designText({ 'top.tip': 99 })));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function call(...argv: readonly string[]) {
  const io = fakeIo();
  return { exit: await run(['sheets', ...argv], io), ...io.said };
}

const sheetsOf = (paper: (typeof PAPERS)['A4' | 'Letter']) =>
  allSheets(acceptDesign(plain), dejaVu, { paper, units: 'mm', holes: 'drilled', date: '2031-05-17' });

describe('sheets as one PDF', () => {
  test('a page for each sheet; the same day gives the same bytes', async () => {
    const [a, b] = [at('a'), at('b')];
    for (const out of [a, b]) {
      const done = await call(at('plain.json'), '--out', out, '--date', '2031-05-17');
      expect(done).toEqual({ exit: 0, out: `${path.join(out, 'Plain_as-drilled_sheets.pdf')}\n`, err: '' });
    }
    expect(readFileSync(path.join(a, 'Plain_as-drilled_sheets.pdf'))).toEqual(
      readFileSync(path.join(b, 'Plain_as-drilled_sheets.pdf')),
    );
  });

  test.runIf(hasPoppler)('is of the paper’s size, with the fingerprint on every page as text', async () => {
    for (const [paper, size] of [
      ['A4', '841.89 x 595.276 pts (A4)'],
      ['Letter', '792 x 612 pts (letter)'],
    ] as const) {
      const out = at(`pages-${paper}`);
      await call(at('plain.json'), '--out', out, '--paper', paper.toLowerCase(), '--date', '2031-05-17');
      const file = path.join(out, 'Plain_as-drilled_sheets.pdf');
      const pages = sheetsOf(PAPERS[paper]).length;
      const info = said('pdfinfo', '-f', '1', '-l', String(pages), file);
      expect(info).toContain(`Pages:           ${pages}\n`);
      expect(info.split(size)).toHaveLength(pages + 1);
      for (let page = 1; page <= pages; page++) {
        const text = said('pdftotext', '-f', String(page), '-l', String(page), file, '-');
        expect(text, `page ${page}`).toContain(fingerprint(plain));
        expect(text, `page ${page}`).toContain('2031-05-17');
      }
    }
  });

  test.runIf(hasPoppler)(
    'a wild name names a file, and stands on the page as far as it has room',
    async () => {
      const out = at('wild');
      const done = await call(at('wild.json'), at('wild.json'), '--out', out, '--units', 'in');
      expect(done.exit).toBe(0);
      const told = `${at('wild.json')}: These letters can’t be set on paper: 🪵; the fingerprint tells the sheets apart.\n`;
      expect(done.err).toBe(told + told);
      const [first = '', second = ''] = readdirSync(out).sort();
      expect(
        [first, second].every((name) => /^a-b-c-d-Long-name-[\w-]*_as-drilled_sheets\.pdf$/.test(name)),
      ).toBe(true);
      const text = said('pdftotext', path.join(out, first), '-');
      expect(text).toMatch(/a\/b\\c: "d" □ Long name.*…/);
      expect(text).toContain('inches');
    },
  );
});

test('an SVG of each sheet', async () => {
  const out = at('svg');
  const done = await call(at('plain.json'), '--format', 'svg', '--out', out);
  const sheets = sheetsOf(PAPERS.A4);
  expect(done.out.trim().split('\n')).toEqual(
    sheets.map(({ id }) => path.join(out, `Plain_as-drilled_${id}.svg`)),
  );
  for (const { id } of sheets) {
    const svg = readFileSync(path.join(out, `Plain_as-drilled_${id}.svg`), 'utf8');
    expect(svg).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"');
  }
});

test('the plan as DXF, which says whose it is', async () => {
  const out = at('dxf');
  const done = await call(at('plain.json'), '--format', 'dxf', '--out', out);
  expect(done.exit).toBe(0);
  expect(readdirSync(out)).toEqual(['Plain_as-drilled_plan.dxf']);
  const dxf = readFileSync(path.join(out, 'Plain_as-drilled_plan.dxf'), 'latin1');
  expect(dxf).toContain(`Bridge: Plain, design ${fingerprint(plain)}, holes as drilled`);
  expect(dxf).toContain('AC1009');
});

test('as reamed: said by the names, drawn and worded so', async () => {
  const out = at('reamed');
  await call(at('plain.json'), '--format', 'dxf', '--as', 'reamed', '--out', out);
  await call(at('plain.json'), '--format', 'svg', '--as', 'reamed', '--out', out);
  expect(readFileSync(path.join(out, 'Plain_as-reamed_plan.dxf'), 'latin1')).toContain('Pin holes as reamed');
  const sections = readFileSync(path.join(out, 'Plain_as-reamed_sections.svg'), 'utf8');
  expect(sections).toContain('Holes as reamed');
  expect(sections).not.toContain('left so');
});

test('goes on past a design that can’t be made', async () => {
  const done = await call(at('thick.json'), at('plain.json'), '--format', 'dxf', '--out', at('past'));
  expect(done.exit).toBe(1);
  expect(done.err).toMatch(/thick\.json: top\.tip: 99/);
  expect(readdirSync(at('past'))).toHaveLength(1);
});

test('wrong use ends with 2 and says which option, what was given and what it may be', async () => {
  for (const [argv, words] of [
    [[], /No design/],
    [['x.json', '--format', 'png'], /--format png: it must be pdf or svg or dxf/],
    [['x.json', '--as', 'svg'], /--as svg: it must be drilled or reamed/],
    [['x.json', '--paper', 'a3'], /--paper a3: it must be a4 or letter/],
    [['x.json', '--units', 'cm'], /--units cm: it must be mm or in/],
    [['x.json', '--date', '2031-02-30'], /--date 2031-02-30: it must be a day such as 2031-05-17/],
    [['x.json', '--date', '1979-12-31'], /from 1980-01-01 to 2099-12-31/],
    [['x.json', '--date', 'today'], /--date today/],
  ] as const) {
    const { exit, out, err } = await call(...argv);
    expect({ exit, out }, argv.join(' ')).toEqual({ exit: 2, out: '' });
    expect(err).toMatch(words);
  }
});
