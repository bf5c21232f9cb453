import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { DesignFit } from '../../src/cli/fitOf.ts';
import { run } from '../../src/cli/run.ts';
import { textWidth } from '../../src/cli/textWidth.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import type { DesignText } from '../../src/design/design.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { writeDesign } from '../../src/files/designFile.ts';
import { change } from '../support/change.ts';
import { fakeIo } from './fakeIo.ts';

let folder: string;
const at = (file: string) => path.join(folder, file);
const write = (file: string, text: DesignText) => writeFileSync(at(file), writeDesign(text));

const NAME = '弦の橋 🎸 Brücke';

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-fit-'));
  write('plain.json', initialDesign());
  write(
    'again.json',
    change(initialDesign(), {
      'guitar.name': NAME,
      'guitar.hand': 'left',
      'saddle.angleBy': 'set',
      'saddle.angle': 2.5,
      'strings.setbacks': ['', 3, '', '', '', ''],
      'action.cents': [3, '', '', '', '', -2],
      'action.measured': [2.2, 2.6],
    }),
  );
  write('nut.json', change(initialDesign(), { 'action.nut': 'solved' }));
  write('misread.json', change(initialDesign(), { 'action.cents': [60, 3, '', '', '', ''] }));
  write('short.json', change(initialDesign(), { 'saddle.slotLength': 52 }));
  write('thick.json', change(initialDesign(), { 'top.tip': 99 }));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function call(argv: readonly string[], options = {}) {
  const io = fakeIo(options);
  return { exit: await run(argv, io), ...io.said };
}

const fitAt = async (file: string): Promise<DesignFit> =>
  JSON.parse((await call(['fit', at(file)])).out) as DesignFit;

/** Every path in a value, entries of a list under one name. */
function keysOf(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(keysOf);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [key, ...keysOf(inner)]);
}

test('prints the fit that the design is made with: strings, slot, saddle, heights', async () => {
  const { design, curves, fit } = acceptDesign(initialDesign());
  const printed = await fitAt('plain.json');
  expect(printed).toMatchObject({ name: 'Untitled bridge', hand: 'right', scaleMm: 645 });
  expect(printed.slot.angleDeg).toBeCloseTo((curves.slot.angle * 180) / Math.PI, 12);
  expect(printed.slot.setbackMm.centre).toBe(design.saddle.setback);
  for (const end of ['treble', 'centre', 'bass'] as const)
    expect(printed.slot.nutToSlotMm[end] - printed.slot.setbackMm[end]).toBeCloseTo(645, 9);
  // plane geometry: the slot's line at the outer strings
  const run = Math.tan(curves.slot.angle) * 27.5;
  expect(printed.slot.setbackMm.treble).toBeCloseTo(design.saddle.setback - run, 9);
  expect(printed.slot.setbackMm.bass).toBeCloseTo(design.saddle.setback + run, 9);
  // α = 1 is a lower bound
  expect(printed.slot.least.angleDeg).toBeLessThan(printed.slot.angleDeg);
  expect(printed.slot.least.setbackMm.centre).toBeLessThan(printed.slot.setbackMm.centre);
  expect(printed.thicknessMm).toBe(curves.profile.thickness);
  expect(printed.crownRadiusMm).toBeCloseTo(406.4, 9);
  expect(printed.fretPlaneMm).toBe(9.3);
  expect(printed.numbers['top.thickness']).toEqual({
    value: design.top.thickness,
    by: 'solved',
    solved: design.top.thickness,
  });
  expect(printed.strings.map(({ note }) => note)).toEqual(['E4', 'B3', 'G3', 'D3', 'A2', 'E2']);
  const sum = printed.strings.reduce((total, { tensionN }) => total + tensionN, 0);
  expect(printed.totalTensionN).toBeCloseTo(sum, 9);
  for (const [i, s] of printed.strings.entries()) {
    expect(s.xMm).toBeCloseTo(27.5 - 11 * i, 9);
    expect(s.onSlotMm + s.residualMm, s.note).toBeCloseTo(s.setbackMm, 9);
    expect(Math.abs(s.filedMm), s.note).toBeLessThanOrEqual(3.2 / 2 - 0.4 + 1e-9);
    expect(s.filable, s.note).toBe(s.filedMm === s.residualMm);
    expect(s.cents.onSlot[11], s.note).toBe(s.residualCents12);
    expect(s.cents.bare, s.note).toHaveLength(12);
    if (s.filable) expect(Math.abs(s.cents.filed[11] ?? 1), s.note).toBeLessThan(1e-6);
    expect(s.saddleShowingMm, s.note).toBeCloseTo(s.heightOverTopMm - topUnder(curves, s.xMm), 9);
    expect(s.saddleInSlotMm, s.note).toBeGreaterThanOrEqual(s.saddleShowingMm - 1e-6);
    // S2 by hand, on the scale of 645 mm
    expect(s.tensionN, s.note).toBeCloseTo((s.massGM / 1000) * (2 * 0.645 * s.frequencyHz) ** 2, 6);
    expect(s.stressGPa, s.note).toBeCloseTo(s.tensionN / ((Math.PI / 4) * s.coreMm ** 2) / 1000, 9);
    expect(s, s.note).toMatchObject({ correctedSetbackMm: null, saddleChangeMm: null, measured: false });
  }
  expect(fit.strings).toHaveLength(printed.strings.length);
});

/** z of the crown's arc at x. */
function topUnder({ profile }: ReturnType<typeof acceptDesign>['curves'], x: number): number {
  const { crownRadius: r, thickness } = profile;
  return thickness - r + Math.sqrt(r * r - x * x);
}

test('what was set and measured is told as such, and what it turns into', async () => {
  const printed = await fitAt('again.json');
  expect(printed.hand).toBe('left');
  expect(printed.numbers['saddle.angle']).toMatchObject({ value: 2.5, by: 'set' });
  expect(printed.numbers['saddle.angle'].solved).not.toBe(2.5);
  expect(printed.slot.angleDeg).toBe(2.5);
  const [first, second] = printed.strings;
  expect(second).toMatchObject({ setbackMm: 3, measured: true, correctedSetbackMm: null });
  // a left-handed guitar's treble stands at −x
  expect(first?.xMm).toBe(-27.5);
  // sharp asks for more: about scale·ln 2/1200 a cent
  const more = (first?.correctedSetbackMm ?? 0) - (first ? first.onSlotMm + first.filedMm : 0);
  expect(more).toBeCloseTo((3 * 645 * Math.LN2) / 1200, 1);
  // twice the difference of action: 1.9 and 2.4 are wanted
  expect(first?.saddleChangeMm).toBeCloseTo(-0.6, 9);
  expect(printed.strings[5]?.saddleChangeMm).toBeCloseTo(-0.4, 9);
});

test('a saddle too short for its strings is null, with the remark', async () => {
  const printed = await fitAt('short.json');
  expect(printed.saddle).toEqual({ lengthMm: 52, blankMm: null, topMm: null });
  expect(printed.remarks).toContainEqual(
    expect.objectContaining({ id: 'saddle-too-short', text: expect.stringContaining('52 mm') }),
  );
});

test('help says what every key is, and what is not known', async () => {
  const { out } = await call(['fit', '--help']);
  expect(out).toMatch(/fitted to common practice[\s\S]*by about 1\.2°[\s\S]*32 listeners/);
  for (const key of new Set(keysOf(await fitAt('again.json')))) {
    // what a curve's pieces and a limit are made of stands in a sentence
    const shown =
      { kind: 'arcs', height: 'least height', finished: 'finished height', thickness: 'thickness' }[key] ??
      key;
    expect(out, key).toMatch(new RegExp(`\\b${shown.replace('.', '\\.')}\\b`));
  }
});

test('several are one array of those that could be made; wrong ones are told under their name', async () => {
  const blank = (await call(['new', 'blank'])).out;
  const { exit, out, err } = await call(['fit', at('thick.json'), at('again.json'), '-', at('none.json')], {
    stdin: blank,
  });
  expect(exit).toBe(3);
  expect((JSON.parse(out) as DesignFit[]).map(({ name }) => name)).toEqual([NAME, 'Untitled bridge']);
  expect(err).toMatch(/thick\.json: top\.tip: 99 is given\. .*\n.*none\.json: .*no such file\n$/);
  expect(await call(['fit', at('thick.json')])).toMatchObject({ exit: 1, out: '' });
  expect(await call(['fit', at('thick.json'), '--table'])).toMatchObject({ exit: 1, out: '' });
});

test('wrong use ends with 2 and nothing on stdout', async () => {
  for (const [argv, said] of [
    [['fit'], /No design/],
    [['fit', '-', '-'], /only once/],
    [['fit', 'x.json', '--tables'], /There is no option --tables\./],
  ] as const) {
    const { exit, out, err } = await call(argv);
    expect({ exit, out }, argv.join(' ')).toEqual({ exit: 2, out: '' });
    expect(err).toMatch(said);
    expect(err).toMatch(/See pinbridge fit --help/);
  }
});

test('tables show the same numbers, in aligned columns, for each design', async () => {
  const { exit, out } = await call(['fit', '--table', at('plain.json'), at('again.json')]);
  expect(exit).toBe(0);
  expect(out).not.toMatch(/NaN|undefined|null|-0\.0*\b(?!\d)/);
  const printed = await fitAt('plain.json');
  expect(out).toMatch(
    new RegExp(
      `^set-back, mm +${printed.slot.setbackMm.treble.toFixed(2)} +.* ${printed.slot.angleDeg.toFixed(2)}$`,
      'm',
    ),
  );
  expect(out).toMatch(new RegExp(`^all +${printed.totalTensionN.toFixed(1)}$`, 'm'));
  expect(out).toMatch(/^Slot angle, ° +2\.50 +set +\d\.\d\d$/m);
  expect(out).toMatch(/^2 B3, measured +3\.00 /m);
  expect(out).toMatch(/^Measured again +set-back becomes mm +saddle changes by mm$/m);
  expect(out).toContain(`\n\n${NAME} · left-handed · scale 645.00 mm\n`);
  // the honest remarks that belong to residual cents
  expect(out).toMatch(/α = 1 is a lower bound/);
  expect(out).toMatch(/moves by about 1\.2°/);
  expect(out).toMatch(/32 listeners/);
  // numbers of one table end in one column
  const strings = out.split('\n\n').find((lines) => lines.startsWith('String '));
  const ends = strings
    ?.split('\n')
    .slice(0, 7)
    .map((line) => line.length);
  expect(new Set(ends).size, strings).toBe(1);
  expect(Math.max(...out.split('\n').map(textWidth))).toBeLessThanOrEqual(100);
});

test('a nut that is set back has its table, and only then', async () => {
  const { out } = await call(['fit', '--table', at('nut.json')]);
  const table = out.split('\n\n').find((lines) => lines.startsWith('Nut '));
  const printed = await fitAt('nut.json');
  const rows = (table ?? '').split('\n').map((line) => line.trim().split(/ {2,}/));
  expect(rows).toEqual([
    ['Nut', 'set-back mm'],
    ...printed.strings.map(({ note, nutSetbackMm }, i) => [`${i + 1} ${note}`, nutSetbackMm.toFixed(2)]),
  ]);
  for (const { note, nutSetbackMm } of printed.strings) expect(nutSetbackMm, note).toBeLessThan(0);
  expect((await call(['fit', '--table', at('plain.json')])).out).not.toMatch(/^Nut /m);
});

test('cents that no saddle could cure give no set-back, but a remark', async () => {
  const printed = await fitAt('misread.json');
  expect(printed.strings[0]?.correctedSetbackMm).toBeNull();
  expect(printed.strings[1]?.correctedSetbackMm).toBeGreaterThan(0);
  expect(printed.remarks).toContainEqual(expect.objectContaining({ id: 'cents-misread' }));
  const { out } = await call(['fit', '--table', at('misread.json')]);
  expect(out).toMatch(/^1 E4 +– +–$/m);
  expect(out).toMatch(/string 1 \(E4\) to 0: something was\s+misread/);
});
