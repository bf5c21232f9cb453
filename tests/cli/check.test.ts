import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { DesignCheck } from '../../src/cli/checkOf.ts';
import { run } from '../../src/cli/run.ts';
import { textWidth } from '../../src/cli/textWidth.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { writeDesign } from '../../src/files/designFile.ts';
import { findings } from '../../src/report/findings/findings.ts';
import { judgedOf } from '../../src/report/findings/judgedOf.ts';
import { withChanges } from '../../src/report/findings/withChanges.ts';
import { type Changes, change } from '../support/change.ts';
import { fakeIo } from './fakeIo.ts';

let folder: string;
const at = (file: string) => path.join(folder, file);
const design = (changes: Changes) => change(initialDesign(), { 'saddle.showing': 4.05, ...changes });

const DESIGNS: Readonly<Record<string, Changes>> = {
  'sound.json': { 'guitar.name': 'Sound' },
  'thin.json': { 'guitar.name': 'Thin', 'top.tip': 2, 'action.planeHeight': 9.5 },
  'wrong.json': { 'guitar.name': 'Wrong', 'saddle.cutter': 4 },
  'refused.json': { 'top.tip': 99 },
};

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-check-'));
  for (const [file, changes] of Object.entries(DESIGNS))
    writeFileSync(at(file), writeDesign(design(changes)));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function call(argv: readonly string[], options = {}) {
  const io = fakeIo(options);
  return { exit: await run(argv, io), ...io.said };
}

const checked = async (file: string): Promise<DesignCheck> =>
  JSON.parse((await call(['check', at(file)])).out) as DesignCheck;

describe('exit codes', () => {
  test.each([
    [['sound.json'], 0],
    [['thin.json'], 0],
    [['wrong.json'], 1],
    [['sound.json', 'wrong.json'], 1],
    [['refused.json'], 1],
    [['wrong.json', 'missing.json'], 3],
  ] as const)('%s end with %i', async (files, exit) => {
    expect((await call(['check', ...files.map(at)])).exit).toBe(exit);
    expect((await call(['check', '--table', ...files.map(at)])).exit).toBe(exit);
  });

  test('the help says that a finding may end with 1', async () => {
    expect((await call(['check', '--help'])).out).toMatch(/1 {2}a design can't be made.*a finding says/);
  });

  test('no design is wrong use', async () => {
    expect(await call(['check'])).toMatchObject({
      exit: 2,
      out: '',
      err: expect.stringMatching(/No design/),
    });
    expect((await call(['check', '--what', at('sound.json')])).exit).toBe(2);
  });
});

describe('JSON', () => {
  test('holds every finding with all its fields, and their counts', async () => {
    const printed = await checked('thin.json');
    const found = findings(judgedOf(acceptDesign(design(DESIGNS['thin.json'] ?? {}))));
    expect(printed.name).toBe('Thin');
    expect(printed.findings.map(({ remedy: _, ...one }) => one)).toEqual(
      found.map((one) => ({ ...one, limitPath: one.limitPath ?? null })),
    );
    expect(printed.counts.warning).toBeGreaterThan(0);
    for (const severity of ['error', 'warning', 'note'] as const)
      expect(printed.counts[severity]).toBe(found.filter((one) => one.severity === severity).length);
  });

  test('a remedy that is printed, typed into the design, takes its finding away', async () => {
    const tip = (await checked('thin.json')).findings.find(({ id }) => id === 'wing-tip');
    expect(tip?.remedy).toMatchObject({ path: 'top.tip', value: 2.5, changes: { 'top.tip': 2.5 } });
    const mended = withChanges(design(DESIGNS['thin.json'] ?? {}), tip?.remedy?.changes ?? {});
    expect(findings(judgedOf(acceptDesign(mended))).map(({ id }) => id)).not.toContain('wing-tip');
  });

  test('what no number mends has null for a remedy, what has no limit of its own null for its field', async () => {
    const list = (await checked('thin.json')).findings;
    expect(list.find(({ id }) => id === 'string-height')?.remedy).toBeNull();
    expect(list.find(({ id }) => id === 'crown-beyond-saddle')?.limitPath).toBeNull();
    expect(list.find(({ id }) => id === 'wing-tip')?.limitPath).toBe('limits.tipLeast');
  });

  test('is an object for one design, an array for several, without those that failed', async () => {
    const { out, err } = await call(['check', at('sound.json'), at('refused.json'), at('wrong.json')]);
    expect((JSON.parse(out) as DesignCheck[]).map(({ name }) => name)).toEqual(['Sound', 'Wrong']);
    expect(err).toMatch(/refused\.json: top\.tip/);
    const one = await call(['check', '-'], { stdin: writeDesign(design({})) });
    expect((JSON.parse(one.out) as DesignCheck).counts).toEqual({ error: 0, warning: 0, note: 1 });
  });
});

test('a table says each finding with limit, source and remedy, in lines that fit a terminal', async () => {
  const { out } = await call(['check', '--table', at('wrong.json'), at('thin.json')]);
  expect(out).toContain('Wrong · 1 error · 0 warnings · 1 note');
  expect(out).toContain('error: cutter-too-wide');
  expect(out).toMatch(/remedy +Take a cutter of 3\.2 mm for the slot\./);
  expect(out).toMatch(/limit +2\.5 to 4 mm/);
  expect(out).toMatch(/source +Common practice, no source\./);
  expect(out).toMatch(/look at +top\.tip/);
  for (const line of out.split('\n')) expect(textWidth(line), line).toBeLessThanOrEqual(100);
});

test('the table of a design of which nothing is found is its name and three noughts', async () => {
  const quiet = writeDesign(design({ 'guitar.name': 'Quiet', 'saddle.filed': 'straight' }));
  expect((await call(['check', '--table', '-'], { stdin: quiet })).out).toBe(
    'Quiet · 0 errors · 0 warnings · 0 notes\n',
  );
});
