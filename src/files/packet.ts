import type { PartMesh } from '../../models/mesh/partMesh.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { allowanceText } from '../making/allowanceText.ts';
import { jobNote } from '../making/jobNote.ts';
import { noteSheet } from '../making/noteSheet.ts';
import type { Order } from '../making/order.ts';
import { orderFor } from '../making/orderFor.ts';
import { withAllowance } from '../making/withAllowance.ts';
import { drawingSheets } from '../sheets/drawingSheets.ts';
import type { Paper } from '../sheets/sheet.ts';
import type { PapersOptions } from '../sheets/sheetOptions.ts';
import type { FontTypeface } from '../sheets/typeface.ts';
import { bridgeDxf } from './bridgeDxf.ts';
import { writeDesign } from './designFile.ts';
import { dimensionCsv, dimensionJson, dimensionTable } from './dimensionTable.ts';
import { type ManifestEntry, manifest, writeManifest } from './manifest.ts';
import { packetNames } from './packetNames.ts';
import { partTitle } from './partName.ts';
import { writePdf } from './pdf.ts';
import { writeThreeMf } from './threeMf.ts';
import { type FileEntry, writeZip } from './zip.ts';

/** What a packet is made of. */
export interface PacketParts {
  /** As it is to be when finished. */
  readonly accepted: AcceptedDesign;
  readonly order: Order;
  /** What its files are called after, if not the design's name. */
  readonly called?: string;
  /** The day that stands in its files, at midnight UTC; 1980 or later, as ZIP has it. */
  readonly date: Date;
  readonly paper: Paper;
  readonly typeface: FontTypeface;
  /** Of the exact solid of `withAllowance(accepted, order.sandingAllowance)`, its holes as `orderFor` this design. */
  readonly step: Uint8Array;
  readonly stl: Uint8Array;
  readonly mesh: Pick<PartMesh, 'positions' | 'triangles'>;
  /** What lengths are said in on the drawing. */
  readonly units: PapersOptions['units'];
}

export interface Packet {
  /** Of the ZIP. */
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly manifest: readonly ManifestEntry[];
}

/**
 * The order packet: everything that a CNC shop needs for a design, in one ZIP with a manifest. The same parts give the
 * same bytes. Throws `DesignError` when the design can't carry the allowance.
 */
export async function packet(parts: PacketParts): Promise<Packet> {
  const { accepted, date, paper, units, typeface } = parts;
  const order = orderFor(accepted.design, parts.order);
  const name = accepted.design.guitar.name;
  const names = packetNames(parts.called ?? name, order);
  const day = date.toISOString().slice(0, 10);
  const title = partTitle(accepted, order.holes, sandingText(order));
  // of the finished bridge, its holes as ordered
  const drawing = drawingSheets(accepted, typeface, { paper, units, date: day, holes: order.holes });
  const cut = withAllowance(accepted, order.sandingAllowance);
  const table = dimensionTable(accepted);
  const note = noteSheet(jobNote(accepted, order), accepted, typeface, { paper, date: day });
  const text = (content: string) => new TextEncoder().encode(content);
  const files: readonly FileEntry[] = [
    { name: names.step, bytes: parts.step },
    { name: names.stl, bytes: parts.stl },
    { name: names.threeMf, bytes: writeThreeMf(parts.mesh, { title, date }) },
    { name: names.dxf, bytes: text(bridgeDxf(cut, order.holes, title)) },
    {
      name: names.drawing,
      bytes: await writePdf(drawing, typeface, { title: `Drawing: ${name}`, date }),
    },
    { name: names.note, bytes: await writePdf(note, typeface, { title: `Job note: ${name}`, date }) },
    { name: names.csv, bytes: text(dimensionCsv(table)) },
    { name: names.json, bytes: text(dimensionJson(name, table)) },
    { name: names.design, bytes: text(writeDesign(accepted.text)) },
  ];
  const entries = manifest(files);
  const listed = { name: names.manifest, bytes: text(writeManifest(`${title}, ${day}`, entries)) };
  return { name: names.zip, bytes: writeZip([...files, listed], date), manifest: entries };
}

function sandingText({ sandingAllowance: left }: Order): string {
  return left > 0 ? `${allowanceText(left)} mm left for sanding on the top` : 'no allowance for sanding';
}
