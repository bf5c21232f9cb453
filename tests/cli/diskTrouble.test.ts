import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { diskTrouble } from '../../src/cli/diskTrouble.ts';
import { FileError } from '../../src/cli/exit.ts';
import { makeFolder } from '../../src/cli/makeFolder.ts';
import { writeWhole } from '../../src/cli/writeWhole.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-trouble-'));
  mkdirSync(path.join(folder, 'taken.pdf'));
  writeFileSync(path.join(folder, 'file'), '');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const bytes = new Uint8Array([1]);

test('a folder in a file’s place, a file in a folder’s: what is in the way and what to do, no code of the system', async () => {
  const at = (name: string) => path.join(folder, name);
  await expect(writeWhole(at('taken.pdf'), bytes)).rejects.toThrow(
    new FileError(
      `${at('taken.pdf')} can't be written: a folder of that name is in the way: move it, or take another folder.`,
    ),
  );
  await expect(makeFolder(at('file'))).rejects.toThrow(
    new FileError(
      `${at('file')} can't be made: a file of that name is in the way: move it, or name another folder.`,
    ),
  );
  await expect(makeFolder(at('file/below'))).rejects.toThrow(
    /a file of that name is in the way|a file stands/,
  );
  await expect(writeWhole(at('file/x.pdf'), bytes)).rejects.toThrow(/a file stands in its path/);
  await expect(writeWhole(at('none/x.pdf'), bytes)).rejects.toThrow(/is missing: make it/);
  expect(readdirSync(folder).sort(), 'nothing half-written is left').toEqual(['file', 'taken.pdf']);
});

test('what has no words here is told in the system’s', () => {
  expect(diskTrouble(Object.assign(new Error('EIO: i/o error'), { code: 'EIO' }))).toBe('EIO: i/o error');
  expect(diskTrouble('odd')).toBe('odd');
});
