import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { writeSvg } from '../../src/files/svg.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { hasPython, PYTHON, said } from '../support/outsideReaders.ts';
import { ODD_TEXT, testSheet } from '../support/someSheets.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-svg-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Prints what Python's XML parser makes of an SVG. */
const READ = `
import json, sys, xml.etree.ElementTree as tree
root = tree.parse(sys.argv[1]).getroot()
svg = '{http://www.w3.org/2000/svg}'
print(json.dumps({
  'tag': root.tag, 'width': root.get('width'), 'height': root.get('height'), 'viewBox': root.get('viewBox'),
  'title': root.find(svg + 'title').text,
  'texts': [t.text for t in root.iter(svg + 'text')],
  'ids': [e.get('id') for e in root.iter() if e.get('id')],
}))`;

test.runIf(hasPython)('an XML parser reads an SVG’s size, title, texts and groups', () => {
  const file = path.join(folder, 'sheet.svg');
  writeFileSync(file, writeSvg({ ...testSheet, title: 'a/b "q" <i> 🪵' }, dejaVu));
  const read = JSON.parse(said(PYTHON, '-c', READ, file)) as Record<string, unknown> & {
    texts: string[];
    ids: string[];
  };
  expect(read).toMatchObject({
    tag: '{http://www.w3.org/2000/svg}svg',
    width: '297mm',
    height: '210mm',
    viewBox: '0 0 297 210',
    title: 'a/b "q" <i> 🪵',
  });
  expect(read.texts).toContain(ODD_TEXT);
  expect(new Set(read.ids).size, 'ids are unique').toBe(read.ids.length);
  expect(read.ids).toEqual(['test-marks', 'test-slot', 'test-pins', 'test-dimensions', 'test-text']);
});
