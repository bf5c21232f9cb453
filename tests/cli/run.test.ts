import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { writeDesign } from '../../src/files/designFile.ts';
import { fakeIo } from './fakeIo.ts';

let folder: string;
const at = (file: string) => path.join(folder, file);

const called = (name: string, top: object = {}) => {
  const design = initialDesign();
  return { ...design, guitar: { ...design.guitar, name }, top: { ...design.top, ...top } };
};

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-cli-'));
  writeFileSync(at('plain.json'), writeDesign(called('Plain', { edge: 'none' })));
  writeFileSync(at('same.json'), writeDesign(called('PLAIN')));
  writeFileSync(at('thick.json'), writeDesign(called('Thick', { tip: 99 })));
  writeFileSync(at('broken.json'), '{\n  "format": }');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function call(argv: readonly string[], options = {}) {
  const io = fakeIo(options);
  return { exit: await run(argv, io), ...io.said };
}

test('help stands on stdout with the exit codes, for all and for each', async () => {
  for (const argv of [
    ['--help'],
    ['help'],
    ...['make', 'sheets', 'steps', 'packet', 'fit', 'check', 'figures', 'starters', 'new'].flatMap((word) => [
      [word, '--help'],
      ['help', word],
    ]),
  ]) {
    const { exit, out, err } = await call(argv);
    expect({ exit, err }, argv.join(' ')).toEqual({ exit: 0, err: '' });
    expect(out, argv.join(' ')).toMatch(
      /Usage: pinbridge[\s\S]*Exit codes[\s\S]*4 {2}the solid kernel refused/,
    );
  }
});

test('the version is the package’s', async () => {
  const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  expect(await call(['--version'])).toEqual({ exit: 0, out: `${version}\n`, err: '' });
});

test('wrong use ends with 2, nothing on stdout, and where help is', async () => {
  for (const [argv, said] of [
    [[], /No command/],
    [['paint'], /no command paint/],
    [['make', 'x.json'], /--out/],
    [['make', '--out', folder], /No design/],
    [['make', 'x.json', '--out', folder, '--as', 'carved'], /--as carved.*drilled or reamed/],
    [['make', 'x.json', '--out', folder, '--schema', 'AP203'], /AP214 or AP242/],
    [['make', 'x.json', '--out', folder, '--deviation', '2'], /--deviation 2.*0\.001 to 1 mm/],
    [['make', 'x.json', '--out', folder, '--deviation', 'fine'], /--deviation fine/],
    [['make', 'x.json', '--out', folder, '--gold'], /^There is no option --gold\.$/m],
    [['figures', 'x.json', '--shema', 'AP214'], /^There is no option --shema\.$/m],
    [['figures', 'x.json', '-q'], /^There is no option -q\.$/m],
    [['figures'], /No design/],
    [['figures', '-', '-'], /only once/],
    [['starters', 'all'], /no arguments/],
    [['new'], /takes one name/],
    [['new', 'concorde'], /no starter called concorde.*wagtail/],
  ] as const) {
    const { exit, out, err } = await call(argv);
    expect({ exit, out }, argv.join(' ')).toEqual({ exit: 2, out: '' });
    expect(err).toMatch(said);
    expect(err).toMatch(/See pinbridge .*--help/);
  }
});

test('every starter that is listed is printed by new, and can be made', async () => {
  const { out } = await call(['starters']);
  const words = [...out.matchAll(/^(\S+) {2,}\S/gm)].map(([, word]) => word ?? '');
  expect(words.length).toBeGreaterThanOrEqual(8);
  for (const word of [...words, 'blank']) {
    const printed = await call(['new', word]);
    expect(printed.exit, word).toBe(0);
    const { text } = acceptDesign(JSON.parse(printed.out));
    expect(printed.out, `${word} is not printed as the program writes it`).toBe(writeDesign(text));
  }
});

test('what can’t be made or read is told under its name with its code, before any kernel is loaded', async () => {
  expect(await call(['figures', at('thick.json')])).toEqual({
    exit: 1,
    out: '',
    err: expect.stringMatching(/thick\.json: top\.tip: 99 is given\. Keep it within 1 to 10 mm\.\n$/),
  });
  const { exit, err } = await call(['figures', at('broken.json'), at('none.json')], { watched: true });
  expect(exit).toBe(3);
  expect(err).toMatch(
    /\[1\/2\].*broken\.json\n.*line 2, column 13[\s\S]*\[2\/2\].*none\.json\n.*can't be read: there is no such file\n$/,
  );
});

test('figures of several are one array of those that could be made; solid and surface agree', async () => {
  const blank = (await call(['new', 'blank'])).out;
  const { exit, out, err } = await call(
    ['figures', at('thick.json'), at('plain.json'), '-', '--as', 'reamed'],
    {
      stdin: blank,
    },
  );
  expect(exit).toBe(1);
  expect(err.split('\n').filter((line) => line !== '')).toHaveLength(1);
  const [plain, other] = JSON.parse(out);
  expect([plain.name, other.name]).toEqual(['Plain', 'Untitled bridge']);
  for (const one of [plain, other]) {
    expect(one).toMatchObject({ holes: 'reamed', solid: { valid: true, throughHoles: 6 } });
    expect(Math.abs(one.surface.volumeMm3 / one.solid.volumeMm3 - 1), one.name).toBeLessThan(5e-4);
    // the default timber is 849 kg/m³
    expect(one.massG).toBeCloseTo(one.surface.volumeMm3 * 849e-6, 6);
    expect(one.massByHolesG.reamed).toBe(one.massG);
    expect(one.massByHolesG.drilled).not.toBe(one.massG);
    expect(one.centroidMm).toHaveLength(3);
    // the default crown follows a fretboard of 16 in
    expect(one.crownRadiusMm).toBeCloseTo(406.4, 9);
    for (const [i, edge] of one.solid.boxMm.entries())
      expect(Math.abs(edge - one.surface.boxMm[i]), `side ${i} of the box`).toBeLessThan(0.01);
  }
  // the wood that the round-over takes
  expect(plain.solid.volumeMm3).toBeGreaterThan(other.solid.volumeMm3);
});

test('figures of one design are one object', async () => {
  const { exit, out } = await call(['figures', at('plain.json')]);
  expect(exit).toBe(0);
  expect(JSON.parse(out)).toMatchObject({ name: 'Plain', holes: 'drilled', solid: { valid: true } });
});

test('make goes on past a bad design, and names alike don’t overwrite each other', async () => {
  const out = at('made/here');
  const result = await call([
    ...['make', at('plain.json'), at('thick.json'), at('same.json'), at('plain.json')],
    ...['--out', out, '--deviation', '0.1', '--as', 'reamed'],
  ]);
  expect(result.exit).toBe(1);
  expect(result.err).toMatch(/thick\.json: top\.tip/);
  const names = ['PLAIN-2', 'Plain', 'Plain-3'].flatMap((name) => [
    `${name}_as-reamed.step`,
    `${name}_as-reamed_mm_facets-0.1.stl`,
  ]);
  expect(readdirSync(out).sort()).toEqual(names.sort());
  expect(result.out.trim().split('\n').sort()).toEqual(names.map((name) => path.join(out, name)).sort());
  const step = readFileSync(path.join(out, 'PLAIN-2_as-reamed.step'), 'latin1');
  expect(step).toMatch(/^ISO-10303-21;/);
  expect(step).toMatch(/END-ISO-10303-21;\s*$/);
  expect(step).toMatch(/FILE_SCHEMA\s*\(\(\s*'AUTOMOTIVE_DESIGN/);
  // the product keeps the design's own name
  expect(step).toMatch(/PRODUCT\('PLAIN'/);
  expect(step.match(/MANIFOLD_SOLID_BREP\(/g)).toHaveLength(1);
  const stl = readFileSync(path.join(out, 'Plain_as-reamed_mm_facets-0.1.stl'));
  expect(stl.length).toBe(84 + 50 * stl.readUInt32LE(80));
  expect(stl.subarray(0, 80).toString()).toMatch(/^Pinbridge, Plain, mm\0/);
});

test('only what is asked for is written, and AP242 on request', async () => {
  const out = at('one');
  expect((await call(['make', at('plain.json'), '--out', out, '--step', '--schema', 'AP242'])).exit).toBe(0);
  expect(readdirSync(out)).toEqual(['Plain_as-drilled.step']);
  const step = readFileSync(path.join(out, 'Plain_as-drilled.step'), 'latin1');
  expect(step.slice(0, step.indexOf('ENDSEC'))).toMatch(
    /FILE_SCHEMA\s*\(\(\s*'AP242_MANAGED_MODEL_BASED_3D_ENGINEERING/,
  );
});

test('a folder that can’t be made ends with 3', async () => {
  // a file stands in its place; a place where a folder is refused though its parent is there
  for (const out of [at('plain.json'), path.join(at('plain.json'), 'below'), '/dev/null/below']) {
    const refused = await call(['make', at('plain.json'), '--out', out, '--stl']);
    expect(refused.exit, out).toBe(3);
    expect(refused.err, out).toMatch(/can't be made/);
  }
});
