import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { packet } from '../../src/files/packet.ts';
import { writePdf } from '../../src/files/pdf.ts';
import { readOrder } from '../../src/making/order.ts';
import { drawingSheets } from '../../src/sheets/drawingSheets.ts';
import { fingerprint } from '../../src/sheets/fingerprint.ts';
import { PAPERS } from '../../src/sheets/sheet.ts';
import { type Changes, designText, thrown } from '../support/change.ts';
import { dejaVu } from '../support/dejaVu.ts';

// The solid's files are only carried: any bytes do. That they are the ordered solid's is tested at the command line.
const tetrahedron = {
  positions: Float32Array.from([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1]),
  triangles: Uint32Array.from([0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3]),
};
const bytes = (text: string) => new TextEncoder().encode(text);

const made = (order: object = {}, changes: Changes = {}, called?: string) =>
  packet({
    accepted: acceptDesign(designText(changes)),
    order: readOrder(order),
    ...(called ? { called } : {}),
    date: new Date('2031-05-17T00:00:00Z'),
    paper: PAPERS.A4,
    typeface: dejaVu,
    step: bytes('STEP'),
    stl: bytes('STL'),
    mesh: tetrahedron,
    units: 'mm',
  });

const read = (zip: Uint8Array) =>
  Object.fromEntries(
    Object.entries(unzipSync(zip)).map(([name, content]) => [name, new TextDecoder().decode(content)]),
  );

describe('the order packet', () => {
  test('holds every file that a shop needs, and a manifest of them all', async () => {
    const { bytes: zip, manifest, name } = await made({ quantity: 3 }, { 'guitar.name': 'Heron' });
    expect(name).toBe('Heron_as-drilled_no-allowance_packet.zip');
    const files = read(zip);
    const part = 'Heron_as-drilled_no-allowance';
    expect(Object.keys(files)).toEqual([
      ...['.step', '_mm.stl', '.3mf', '_plan.dxf', '_drawing.pdf', '_job-note.pdf'].map((end) => part + end),
      ...['_dimensions.csv', '_dimensions.json', '_design.json', '_manifest.txt'].map((end) => part + end),
    ]);
    expect(manifest.map((one) => one.name)).toEqual(Object.keys(files).slice(0, -1));
    const listed = files[`${part}_manifest.txt`] as string;
    for (const { name: file, size, sha256 } of manifest)
      expect(listed).toContain(`# ${size} bytes\n${sha256}  ${file}\n`);
    expect(files[`${part}.step`]).toBe('STEP');
  });

  test('the same parts give the same bytes, another order others', async () => {
    const first = await made({ quantity: 2 });
    expect(await made({ quantity: 2 })).toEqual(first);
    expect((await made({ quantity: 3 })).bytes).not.toEqual(first.bytes);
  });

  test('manifest and DXF say which design, how its holes are and what is left for sanding', async () => {
    const changes = { 'guitar.name': 'Häger “½”' };
    const { bytes: zip } = await made({ holes: 'reamed', sandingAllowance: 0.2 }, changes);
    const files = read(zip);
    const print = fingerprint(acceptDesign(designText(changes)).text);
    const said = `design ${print}, holes as reamed, 0.2 mm left for sanding on the top`;
    expect(files['Häger-½_as-reamed_allowance-0.2_manifest.txt']).toContain(
      `# Häger “½”, ${said}, 2031-05-17\n`,
    );
    expect(files['Häger-½_as-reamed_allowance-0.2_plan.dxf']).toContain(said);
    expect(files['Häger-½_as-reamed_allowance-0.2_plan.dxf']).toContain('Pin holes as reamed');
    // what shows the finished bridge says so
    expect(Object.keys(files).filter((one) => one.includes('_finished-size_'))).toHaveLength(4);
  });

  test('ordered as reamed where the reamer takes nothing off: as drilled by every name, title and drawing', async () => {
    for (const changes of [{ 'pins.taper': 0 }, { 'pins.mouth': '3/16 in' }]) {
      const { name, bytes: zip } = await made({ holes: 'reamed' }, { ...changes, 'guitar.name': 'Heron' });
      const drilled = await made({ holes: 'drilled' }, { ...changes, 'guitar.name': 'Heron' });
      expect(name).toBe('Heron_as-drilled_no-allowance_packet.zip');
      expect(zip).toEqual(drilled.bytes);
      const files = read(zip);
      expect(Object.keys(files).filter((one) => !one.includes('_as-drilled_'))).toEqual([]);
      expect(files['Heron_as-drilled_no-allowance_manifest.txt']).toContain('holes as drilled');
    }
  });

  test('its drawing is of the ordered holes', async () => {
    const accepted = acceptDesign(designText({ 'guitar.name': 'Heron' }));
    const date = new Date('2031-05-17T00:00:00Z');
    const drawn = async (holes: 'drilled' | 'reamed') => {
      const options = { paper: PAPERS.A4, units: 'mm', date: '2031-05-17', holes } as const;
      const sheets = drawingSheets(accepted, dejaVu, options);
      return Buffer.from(await writePdf(sheets, dejaVu, { title: 'Drawing: Heron', date }));
    };
    expect((await drawn('drilled')).equals(await drawn('reamed'))).toBe(false);
    for (const holes of ['drilled', 'reamed'] as const) {
      const { bytes: zip } = await made({ holes }, { 'guitar.name': 'Heron' });
      const inZip = unzipSync(zip)[`Heron_as-${holes}_no-allowance_drawing.pdf`] as Uint8Array;
      expect((await drawn(holes)).equals(inZip), `the drawing of an order as ${holes}`).toBe(true);
    }
  });

  test('the design file in it is the design', async () => {
    const { bytes: zip } = await made({ sandingAllowance: 0.1 }, { 'top.tip': '1/8 in' });
    const file = Object.entries(read(zip)).find(([name]) => name.endsWith('_design.json'))?.[1];
    expect(acceptDesign(JSON.parse(file as string)).text).toEqual(
      acceptDesign(designText({ 'top.tip': '1/8 in' })).text,
    );
  });

  test('is called among others as it is told', async () => {
    const { name, bytes: zip } = await made({}, { 'guitar.name': 'Heron' }, 'Heron-2');
    expect(name).toMatch(/^Heron-2_/);
    expect(Object.keys(read(zip)).every((one) => one.startsWith('Heron-2_'))).toBe(true);
  });

  test('refuses what the design can’t carry', async () => {
    const failed = await made({ sandingAllowance: 0.5 }, { 'top.thickness': 18, 'saddle.depth': 12 }).catch(
      (error: unknown) => error,
    );
    const [problem] = thrown(() => {
      throw failed;
    });
    expect(problem?.path).toBe('top.thickness');
  });
});
