import type { Holes } from '../../../models/curves/curves.ts';
import type { PartMesh } from '../../../models/mesh/partMesh.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { type Packet, packet } from '../../files/packet.ts';
import { partTitle } from '../../files/partName.ts';
import { writePdf } from '../../files/pdf.ts';
import { writeSvg } from '../../files/svg.ts';
import { writeThreeMf } from '../../files/threeMf.ts';
import { writeZip } from '../../files/zip.ts';
import { jobByHand } from '../../making/jobByHand.ts';
import { jobSheet } from '../../making/jobSheet.ts';
import type { Order } from '../../making/order.ts';
import type { Workshop } from '../../making/workshop.ts';
import { allSheets } from '../../sheets/allSheets.ts';
import { drawingSheets } from '../../sheets/drawingSheets.ts';
import { lettersNote } from '../../sheets/lettersNote.ts';
import { PAPERS, type Sheet } from '../../sheets/sheet.ts';
import type { PapersOptions } from '../../sheets/sheetOptions.ts';
import type { PapersChoice } from '../store/state.ts';
import { loadTypeface } from './loadTypeface.ts';
import { dayText, today } from './today.ts';

/** A sheet and the picture of it that files hold. */
export interface Page {
  readonly sheet: Sheet;
  readonly svg: string;
}

/** What a shop gets of the exact solid, from the client. */
export interface SolidFiles {
  readonly step: Uint8Array;
  readonly stl: Uint8Array;
  readonly mesh: PartMesh;
}

/** On what, in which units and with which holes sheets are drawn. */
export interface SheetsChoice extends PapersChoice {
  readonly holes: Holes;
}

/** Which of a design's sheets a PDF holds. */
export type SheetsPart = 'all' | 'drawing' | 'templates';

/** Everything that is set in type, dated today. It is large, so it is loaded when it is first asked for: `loadPress`. */
export interface Press {
  /** The same array as long as design, choice and day are the same. */
  pages(accepted: AcceptedDesign, choice: SheetsChoice): readonly Page[];
  sheetsPdf(accepted: AcceptedDesign, choice: SheetsChoice, part: SheetsPart): Promise<Uint8Array>;
  /** Says which letters of the design's words the fonts lack; undefined if none. */
  letters(accepted: AcceptedDesign): string | undefined;
  /** An SVG of each sheet, in one ZIP. @param called what their names begin with */
  sheetsZip(accepted: AcceptedDesign, choice: SheetsChoice, called: string): Uint8Array;
  jobPdf(accepted: AcceptedDesign, workshop: Workshop, choice: PapersChoice): Promise<Uint8Array>;
  threeMf(accepted: AcceptedDesign, holes: Holes, mesh: PartMesh): Uint8Array;
  packet(accepted: AcceptedDesign, order: Order, choice: PapersChoice, solid: SolidFiles): Promise<Packet>;
}

/** Rejects when the fonts can't be had. */
export async function createPress(): Promise<Press> {
  const typeface = await loadTypeface();
  const drawn = new WeakMap<AcceptedDesign, { readonly key: string; readonly pages: readonly Page[] }>();
  const optionsOf = ({ paper, units, holes }: SheetsChoice): PapersOptions => ({
    paper: PAPERS[paper],
    units,
    holes,
    date: dayText(today()),
  });

  const pages: Press['pages'] = (accepted, choice) => {
    const options = optionsOf(choice);
    const key = `${choice.paper} ${choice.units} ${choice.holes} ${options.date}`;
    const known = drawn.get(accepted);
    if (known?.key === key) return known.pages;
    const made = allSheets(accepted, typeface, options).map((sheet) => ({
      sheet,
      svg: writeSvg(sheet, typeface),
    }));
    drawn.set(accepted, { key, pages: made });
    return made;
  };

  return {
    pages,
    letters: ({ design }) => lettersNote([design.guitar.name, design.timber.name], typeface),
    sheetsPdf(accepted, choice, part) {
      const all = pages(accepted, choice).map(({ sheet }) => sheet);
      const drawing = new Set(drawingSheets(accepted, typeface, optionsOf(choice)).map(({ id }) => id));
      const sheets = all.filter(({ id }) => part === 'all' || drawing.has(id) === (part === 'drawing'));
      const title = `${TITLES[part]}: ${accepted.design.guitar.name}`;
      return writePdf(sheets, typeface, { title, date: today() });
    },
    sheetsZip(accepted, choice, called) {
      const files = pages(accepted, choice).map(({ sheet, svg }) => ({
        name: `${called}_${sheet.id}.svg`,
        bytes: new TextEncoder().encode(svg),
      }));
      return writeZip(files, today());
    },
    jobPdf(accepted, workshop, choice) {
      const paper = PAPERS[choice.paper];
      const date = dayText(today());
      const sheets = jobSheet(jobByHand(accepted, workshop), accepted, typeface, { paper, date });
      return writePdf(sheets, typeface, {
        title: `Job by hand: ${accepted.design.guitar.name}`,
        date: today(),
      });
    },
    threeMf(accepted, holes, mesh) {
      return writeThreeMf(mesh, { title: partTitle(accepted, holes), date: today() });
    },
    packet(accepted, order, choice, solid) {
      const { units } = choice;
      return packet({
        accepted,
        order,
        date: today(),
        paper: PAPERS[choice.paper],
        units,
        typeface,
        ...solid,
      });
    },
  };
}

const TITLES: Readonly<Record<SheetsPart, string>> = {
  all: 'Sheets',
  drawing: 'Drawing',
  templates: 'Templates',
};
