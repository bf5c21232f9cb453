import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { STARTER_FILES } from '../../src/cli/starterFiles.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { dimensionCsv, dimensionTable } from '../../src/files/dimensionTable.ts';
import { manifest, writeManifest } from '../../src/files/manifest.ts';
import { safeName } from '../../src/files/safeName.ts';
import { type FileEntry, writeZip } from '../../src/files/zip.ts';
import { hasPython, hasUnzip, PYTHON, said } from '../support/outsideReaders.ts';

// Unpacked by the system's unzip (where it is) and by Python; hashed by coreutils' sha256sum.

const folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-zip-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const wild = ['a/b\\c: "quoted" 🪵', 'Häger 橋', 'x'.repeat(300), '..', 'CON', ''].map(
  (name, i) => `${safeName(name, `-${i}`)}.bin`,
);
const files: readonly FileEntry[] = [
  ...wild.map((name, i) => ({ name, bytes: Uint8Array.from({ length: 1000 * i }, (_, k) => (k * k) % 256) })),
  { name: 'drawings/plan.txt', bytes: new TextEncoder().encode('plan') },
];
const entries = manifest(files);
const listed: FileEntry = {
  name: 'manifest.txt',
  bytes: new TextEncoder().encode(writeManifest('Packet “½”\n🪵', entries)),
};
const file = path.join(folder, 'packet.zip');
writeFileSync(file, writeZip([...files, listed], new Date('2026-03-04T05:06:08Z')));

/** Checks an unpacked packet: every byte, and the manifest by another's hashes. */
function expectWhole(unpacked: string) {
  for (const { name, bytes } of [...files, listed])
    expect(new Uint8Array(readFileSync(path.join(unpacked, name))), name).toEqual(bytes);
  const checked = spawnSync('sha256sum', ['-c', '--strict', 'manifest.txt'], {
    cwd: unpacked,
    encoding: 'utf8',
  });
  expect(checked.stderr).toBe('');
  expect(checked.stdout.trim().split('\n')).toEqual(files.map(({ name }) => `${name}: OK`));
}

describe('a ZIP', () => {
  test.runIf(hasUnzip)('unpacks whole by the system’s unzip', () => {
    expect(said('unzip', '-t', file)).toContain('No errors detected');
    const unpacked = path.join(folder, 'by-unzip');
    said('unzip', '-q', file, '-d', unpacked);
    expectWhole(unpacked);
  });

  test.runIf(hasPython)('unpacks whole by Python', () => {
    const unpacked = path.join(folder, 'by-python');
    mkdirSync(unpacked);
    said(PYTHON, '-m', 'zipfile', '-t', file);
    said(PYTHON, '-m', 'zipfile', '-e', file, unpacked);
    expectWhole(unpacked);
  });
});

/** Prints a CSV's rows as objects. */
const READ = `
import csv, json, sys
with open(sys.argv[1], newline='', encoding='utf-8-sig') as file:
  print(json.dumps(list(csv.DictReader(file, strict=True))))`;

test.runIf(hasPython)('Python reads the dimension table’s rows as they are', () => {
  const starter = STARTER_FILES.find(({ name }) => name === 'Bittern')?.json as { guitar: object };
  const name = 'a, "b" 🪵; ½';
  const table = dimensionTable(acceptDesign({ ...starter, guitar: { ...starter.guitar, name } }));
  const csv = path.join(folder, 'dimensions.csv');
  writeFileSync(csv, dimensionCsv(table));
  const rows = JSON.parse(said(PYTHON, '-c', READ, csv)) as Record<string, string>[];
  expect(rows).toEqual(table.map((row) => ({ ...row, value: row.value === null ? '' : String(row.value) })));
  expect(rows.find(({ path: at }) => at === 'guitar.name')?.value).toBe(name);
});
