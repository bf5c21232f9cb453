import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { surfaceFigures } from '../../models/surface/figures.ts';
import { run } from '../../src/cli/run.ts';
import { STARTER_FILES } from '../../src/cli/starterFiles.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { withAllowance } from '../../src/making/withAllowance.ts';
import { fingerprint } from '../../src/sheets/fingerprint.ts';
import { designText } from '../support/change.ts';
import { hasPoppler, hasUnzip, said } from '../support/outsideReaders.ts';
import { fakeIo } from './fakeIo.ts';

// One design, built once; unpacked by the system's unzip where it is, hashed by coreutils' sha256sum.

const folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-packet-'));
const at = (file: string) => path.join(folder, file);
const starter = STARTER_FILES.find(({ name }) => name === 'Bittern')?.json as { guitar: object };
const NAME = 'Häger/“½” "q" 🪵';
const accepted = acceptDesign({ ...starter, guitar: { ...starter.guitar, name: NAME } });
const PART = 'Häger-½-q_as-reamed_allowance-0.2';
const FINISHED = 'Häger-½-q_as-reamed_finished-size';
const ORDER = [
  ...['--quantity', '12', '--deadline', '2031-06-01', '--remarks', 'Two lines,\nthis is the last.'],
  ...['--as', 'reamed', '--allowance', '0.2 mm', '--date', '2031-05-17'],
];

async function call(...argv: readonly string[]) {
  const io = fakeIo();
  return { exit: await run(['packet', ...argv], io), ...io.said };
}

let done: Awaited<ReturnType<typeof call>>;
let files: Readonly<Record<string, Uint8Array>>;
const zip = at(`out/${PART}_packet.zip`);
beforeAll(async () => {
  writeFileSync(at('design.json'), JSON.stringify(accepted.text));
  writeFileSync(at('thick.json'), JSON.stringify(designText({ 'top.thickness': 18, 'saddle.depth': 12 })));
  done = await call(at('design.json'), '--out', at('out'), ...ORDER);
  files = unzipSync(new Uint8Array(readFileSync(zip)));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const text = (name: string) => new TextDecoder().decode(files[name]);

describe('a packet', () => {
  test('is told on stdout, and holds what a shop needs', () => {
    expect(done).toEqual({
      exit: 0,
      out: `${zip}\n`,
      err: `${at('design.json')}: These letters can’t be set on paper: 🪵; the fingerprint tells the sheets apart.\n`,
    });
    expect(Object.keys(files).sort()).toEqual(
      [
        ...['.step', '_mm.stl', '.3mf', '_plan.dxf', '_job-note.pdf', '_manifest.txt'].map(
          (end) => PART + end,
        ),
        ...['_drawing.pdf', '_dimensions.csv', '_dimensions.json', '_design.json'].map(
          (end) => FINISHED + end,
        ),
      ].sort(),
    );
  });

  test.runIf(hasUnzip)('unpacks by the system’s unzip, and its hashes are right by sha256sum', () => {
    const unpacked = at('unpacked');
    said('unzip', '-q', zip, '-d', unpacked);
    expect(readdirSync(unpacked).sort()).toEqual(Object.keys(files).sort());
    const checked = spawnSync('sha256sum', ['-c', '--strict', `${PART}_manifest.txt`], {
      cwd: unpacked,
      encoding: 'utf8',
    });
    expect(checked.stderr).toBe('');
    expect(checked.stdout.trim().split('\n')).toHaveLength(Object.keys(files).length - 1);
    expect(checked.stdout).not.toContain('FAILED');
  });

  test('its solid is as ordered: reamed, 0.2 mm higher on the top, dated', () => {
    const raised = withAllowance(accepted, 0.2);
    const stl = Buffer.from(files[`${PART}_mm.stl`] as Uint8Array);
    const { volume, top } = measured(stl);
    const { volumeMm3 } = surfaceFigures(raised.curves, 'reamed');
    expect(Math.abs(volume / volumeMm3 - 1), 'STL volume to that of the wood').toBeLessThan(1e-3);
    expect(top).toBeCloseTo(accepted.design.top.thickness + 0.2, 2);
    const step = text(`${PART}.step`);
    expect(step.slice(0, step.indexOf('ENDSEC'))).toContain("'2031-05-17T00:00:00'");
    expect(step).toMatch(/CONICAL_SURFACE/);
    const model = new TextDecoder().decode(unzipSync(files[`${PART}.3mf`] as Uint8Array)['3D/3dmodel.model']);
    const heights = [...model.matchAll(/ z="([-\d.]+)"/g)].map(([, z]) => Number(z));
    expect(Math.max(...heights)).toBeCloseTo(top, 3);
  });

  test.runIf(hasPoppler)('its papers are text of the right size, with the manifest’s fingerprint', () => {
    const print = fingerprint(accepted.text);
    expect(text(`${PART}_manifest.txt`)).toContain(
      `# ${NAME}, design ${print}, holes as reamed, 0.2 mm left for sanding on the top, 2031-05-17\n`,
    );
    for (const [name, size] of [
      [`${PART}_job-note.pdf`, '595.276 x 841.89 pts (A4)'],
      [`${FINISHED}_drawing.pdf`, '841.89 x 595.276 pts (A4)'],
    ] as const) {
      const file = at('paper.pdf');
      writeFileSync(file, files[name] as Uint8Array);
      expect(said('pdfinfo', file)).toContain(size);
      expect(said('pdftotext', file, '-')).toContain(print);
    }
    const drawing = said('pdftotext', '-layout', at('paper.pdf'), '-').replace(/\s+/g, ' ');
    expect(drawing).toContain('Holes as reamed');
    expect(drawing).not.toContain('left so');
    writeFileSync(at('note.pdf'), files[`${PART}_job-note.pdf`] as Uint8Array);
    expect(said('pdfinfo', at('note.pdf'))).toMatch(/Pages: +1\n/);
    const note = said('pdftotext', '-layout', at('note.pdf'), '-').replace(/\s+/g, ' ');
    for (const words of [
      'Job note: Häger/“½” "q" □',
      '12 pieces',
      'Wanted by: 2031-06-01',
      'this is the last.',
      'As reamed',
      'With 0.2 for sanding on the top',
      'sides, glue face, slot and holes are to size',
      'Hardwood dust harms the lungs',
    ])
      expect(note).toContain(words);
  });

  test('the same design, order and day give the same bytes', async () => {
    await call(at('design.json'), '--out', at('again'), ...ORDER);
    expect(readFileSync(at(`again/${PART}_packet.zip`)).equals(readFileSync(zip))).toBe(true);
  });
});

test('wrong use ends with 2, before any kernel is loaded, and says which option', async () => {
  for (const [argv, words] of [
    [['x.json'], /--quantity N is missing/],
    [['--quantity', '1'], /No design/],
    [['x.json', '--quantity', '0'], /--quantity 0: it must be a whole number from 1 to 999/],
    [['x.json', '--quantity', '1.5'], /--quantity 1\.5: it must be a whole number/],
    [['x.json', '--quantity', 'many'], /--quantity many/],
    [['x.json', '--quantity', '1', '--deadline', '2031-02-30'], /--deadline 2031-02-30: it must be a day/],
    [['x.json', '--quantity', '1', '--as', 'carved'], /--as carved: it must be drilled, reamed/],
    [['x.json', '--quantity', '1', '--allowance', '9'], /--allowance 9: it must be 0, or 0\.01 to 0\.5 mm/],
    [['x.json', '--quantity', '-1'], /--quantity -1: it must be a whole number from 1 to 999/],
    [['x.json', '--quantity', '1', '--allowance', '-0.1'], /--allowance -0\.1: it must be 0, or/],
    [
      ['x.json', '--quantity', '1', '--deadline', '2031-05-16', '--date', '2031-05-17'],
      /--deadline 2031-05-16: it must be a day from 2031-05-17 on/,
    ],
    [['x.json', '--quantity', '1', '--allowance', 'some'], /--allowance some/],
    [
      ['x.json', '--quantity', '1', '--remarks', 'x'.repeat(2001)],
      /--remarks "x+…: it must be text of up to 2000/,
    ],
    [['x.json', '--quantity', '1', '--date', '31 May'], /--date 31 May/],
  ] as const) {
    const { exit, out, err } = await call(...argv);
    expect({ exit, out }, argv.join(' ')).toEqual({ exit: 2, out: '' });
    expect(err).toMatch(words);
    expect(err).toMatch(/See pinbridge packet --help/);
  }
});

test('a design that can’t carry the allowance ends with 1, and says so', async () => {
  const refused = await call(at('thick.json'), '--quantity', '1', '--allowance', '0.2', '--out', at('none'));
  expect(refused.exit).toBe(1);
  expect(refused.err).toMatch(/thick\.json: top\.thickness: 18\.2 with 0\.2 mm left for sanding is given/);
});

/** Volume and highest point of a binary STL's solid, mm³ and mm. */
function measured(stl: Buffer): { volume: number; top: number } {
  let [volume, top] = [0, Number.NEGATIVE_INFINITY];
  const count = stl.readUInt32LE(80);
  const corner = (facet: number, k: number) =>
    [0, 4, 8].map((off) => stl.readFloatLE(84 + 50 * facet + 12 * (k + 1) + off)) as [number, number, number];
  for (let facet = 0; facet < count; facet++) {
    const [a, b, c] = [corner(facet, 0), corner(facet, 1), corner(facet, 2)];
    volume +=
      (a[0] * (b[1] * c[2] - b[2] * c[1]) -
        a[1] * (b[0] * c[2] - b[2] * c[0]) +
        a[2] * (b[0] * c[1] - b[1] * c[0])) /
      6;
    top = Math.max(top, a[2], b[2], c[2]);
  }
  return { volume, top };
}
