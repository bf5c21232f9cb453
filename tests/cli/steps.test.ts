import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { groundText } from '../../src/making/groundText.ts';
import { jobByHand } from '../../src/making/jobByHand.ts';
import { usualWorkshop } from '../../src/making/workshop.ts';
import { fingerprint } from '../../src/sheets/fingerprint.ts';
import { CAUTIONS } from '../../src/trade/cautions.ts';
import { designText } from '../support/change.ts';
import { hasPoppler, said } from '../support/outsideReaders.ts';
import { fakeIo } from './fakeIo.ts';

let folder: string;
const at = (file: string) => path.join(folder, file);
const plain = designText({ 'guitar.name': 'Plain' });

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-steps-'));
  const put = (name: string, json: unknown) => writeFileSync(at(name), JSON.stringify(json));
  put('plain.json', plain);
  put('narrow.json', designText({ 'saddle.slotWidth': 1.6, 'saddle.cutter': 1.5 }));
  put('shop.json', { slot: 'hand', reamBy: 'depth' });
  put('wide.json', { cutter: '1/8 in' });
  put('wrong.json', { cutter: 99, lathe: 'yes' });
  put('measured.json', { 'check.thickness': '9.7 mm', 'check.slot-width': 3.21, 'check.length': '' });
  put('tip.json', { 'check.tip': 2 });
  put('misspelt.json', { 'check.thikness': 9.7 });
  writeFileSync(at('broken.json'), '{\n  "slot": }');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function call(...argv: readonly string[]) {
  const io = fakeIo();
  return { exit: await run(['steps', ...argv], io), ...io.said };
}

describe('as JSON', () => {
  test('every step with its settings, the tools and what can hurt', async () => {
    const { exit, out, err } = await call(at('plain.json'));
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const printed = JSON.parse(out);
    const accepted = acceptDesign(plain);
    const wanted = jobByHand(accepted, usualWorkshop(3.2));
    expect(printed).toMatchObject({ name: 'Plain', fingerprint: fingerprint(plain), meaning: null });
    expect(printed.workshop.cutter).toBe(usualWorkshop(3.2).cutter);
    expect(printed.steps.map(({ id }: { id: string }) => id)).toEqual(wanted.map(({ id }) => id));
    expect(printed.steps[0].cautions[0]).toEqual(CAUTIONS.dust);
    const depth = printed.steps
      .flatMap(({ settings }: { settings: readonly { id: string }[] }) => settings)
      .find(({ id }: { id: string }) => id === 'slot.depth');
    expect(depth).toMatchObject({ unit: 'mm', measure: true, measured: null, judgement: null });
    expect(depth.value).toBeCloseTo(5.8, 6);
    const wings = printed.steps.find(({ id }: { id: string }) => id === 'wings');
    expect(wings.template, 'the id of a sheet').toBe('front');
    expect(wings.settings).toContainEqual(expect.objectContaining({ id: 'wings.blend', known: 'set' }));
  });

  test('several designs are one array', async () => {
    const { out } = await call(at('plain.json'), at('narrow.json'));
    expect(JSON.parse(out)).toHaveLength(2);
  });

  test('for the tools in a file; what it leaves out is as usual for this slot', async () => {
    const { out } = await call(at('narrow.json'), '--workshop', at('shop.json'));
    const { workshop, steps } = JSON.parse(out);
    expect(workshop).toMatchObject({ slot: 'hand', reamBy: 'depth', cutter: usualWorkshop(1.6).cutter });
    expect(steps.find(({ id }: { id: string }) => id === 'slot').needs).toContain('chisel');
  });

  test('measured values are judged, and what they mean is said', async () => {
    const { exit, out } = await call(at('plain.json'), '--measured', at('measured.json'));
    expect(exit).toBe(0);
    const { steps, meaning } = JSON.parse(out);
    const settings = new Map(
      steps
        .flatMap((step: { settings: readonly { id: string }[] }) => step.settings)
        .map((one: { id: string }) => [one.id, one]),
    );
    // 9.5 as designed, ±0.1
    expect(settings.get('check.thickness')).toMatchObject({
      measured: 9.7,
      judgement: { within: false, text: '0.20 mm more than wanted: outside by 0.10 mm' },
    });
    expect(settings.get('check.slot-width')).toMatchObject({ measured: 3.21, judgement: { within: true } });
    expect(settings.get('check.length')).toMatchObject({ measured: null, judgement: null });
    expect(meaning.text.join(' ')).toContain('Action at the 12th fret comes out');
    expect(meaning.stiffness).toBeCloseTo((9.7 / 9.5) ** 3, 6);
  });
});

test('as a list for a terminal, no line wider than 100 columns but for judgements', async () => {
  const { exit, out } = await call(at('plain.json'), '--table');
  expect(exit).toBe(0);
  expect(out).toMatch(new RegExp(`^Plain · design ${fingerprint(plain)} · lengths in mm\n`));
  expect(out).toMatch(/Planed thickness +\d+\.\d\d mm +±0\.1\b/);
  const flat = out.replace(/\s+/g, ' ');
  expect(flat).toContain(`Dust: ${CAUTIONS.dust.text}`);
  for (const setting of jobByHand(acceptDesign(plain), usualWorkshop(3.2)).flatMap((s) => s.settings))
    expect(flat, setting.id).toContain(groundText(setting));
  expect(out.split('\n').filter((line) => line.length > 100)).toEqual([]);
  const judged = await call(at('plain.json'), '--table', '--measured', at('measured.json'));
  expect(judged.out).toMatch(/±0\.1 +9\.70 mm +0\.20 mm more than wanted: outside by 0\.10 mm/);
  expect(judged.out).toContain('What the measured values mean');
  expect(judged.out).toMatch(
    /The saddle wanted now, mm along it\n +String +shows over the top +foot to crown\n/,
  );
  expect(judged.out, 'no list but the cents’ table').toMatch(
    /String +as designed +laid by the slot +laid by the back edge/,
  );
  const tip = await call(at('plain.json'), '--table', '--measured', at('tip.json'));
  expect(tip.out).toContain('- 1 value is outside its tolerance');
});

describe('as pages', () => {
  test.runIf(hasPoppler)('stand upright, are text, and carry the fingerprint on each', async () => {
    const out = at('pages');
    const done = await call(at('plain.json'), '--pdf', '--out', out, '--date', '2031-05-17');
    const file = path.join(out, 'Plain_job-by-hand.pdf');
    expect(done).toEqual({ exit: 0, out: `${file}\n`, err: '' });
    const count = Number(/Pages: +(\d+)/.exec(said('pdfinfo', file))?.[1]);
    expect(count).toBeGreaterThan(2);
    const info = said('pdfinfo', '-f', '1', '-l', String(count), file);
    expect(info.split('595.276 x 841.89 pts (A4)')).toHaveLength(count + 1);
    for (let page = 1; page <= count; page++) {
      const text = said('pdftotext', '-layout', '-f', String(page), '-l', String(page), file, '-');
      expect(text).toMatch(
        new RegExp(`Job by hand: Plain +Design ${fingerprint(plain)} +2031-05-17 +Page ${page} of ${count}`),
      );
    }
    const text = said('pdftotext', file, '-').replace(/\s+/g, ' ');
    for (const step of jobByHand(acceptDesign(plain), usualWorkshop(3.2))) expect(text).toContain(step.title);
    const again = at('pages-again');
    await call(at('plain.json'), '--pdf', '--out', again, '--date', '2031-05-17');
    expect(readFileSync(path.join(again, 'Plain_job-by-hand.pdf'))).toEqual(readFileSync(file));
  });

  test('names alike are told apart', async () => {
    const out = at('alike');
    await call(at('plain.json'), at('plain.json'), '--pdf', '--out', out);
    expect(readdirSync(out).sort()).toEqual(['Plain-2_job-by-hand.pdf', 'Plain_job-by-hand.pdf']);
  });
});

test('what is wrong is said with its option or its field, and the code that fits', async () => {
  for (const [argv, exit, words] of [
    [['x.json', '--pdf', '--table'], 2, /--table and --pdf: one of them/],
    [['x.json', '--pdf', '--measured', 'm.json'], 2, /--pdf and --measured/],
    [
      ['x.json', '--workshop', at('none.json')],
      3,
      /--workshop .*none\.json: it can't be read: there is no such/,
    ],
    [['x.json', '--workshop', at('broken.json')], 3, /--workshop .*broken\.json: .*line 2, column 11/],
    [
      [at('plain.json'), '--workshop', at('wrong.json')],
      2,
      /--workshop .*wrong\.json: workshop\.lathe: there is no/,
    ],
    [
      [at('plain.json'), '--workshop', at('wrong.json')],
      2,
      /workshop\.cutter: 99 is given\. Keep it within 0\.8 to 8 mm/,
    ],
    [
      [at('narrow.json'), '--workshop', at('wide.json')],
      2,
      /narrow\.json: --workshop .*wide\.json: workshop\.cutter: 3\.175 does not fit/,
    ],
    [
      [at('plain.json'), '--measured', at('misspelt.json')],
      1,
      /measured\.check\.thikness: there is no such field/,
    ],
  ] as const) {
    const done = await call(...argv);
    expect({ exit: done.exit, out: done.out }, argv.join(' ')).toEqual({ exit, out: '' });
    expect(done.err).toMatch(words);
  }
});
