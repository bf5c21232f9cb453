import path from 'node:path';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { bridgeDxf } from '../files/bridgeDxf.ts';
import { holesEnd, partTitle } from '../files/partName.ts';
import { writePdf } from '../files/pdf.ts';
import { writeSvg } from '../files/svg.ts';
import type { FileEntry } from '../files/zip.ts';
import { allSheets } from '../sheets/allSheets.ts';
import type { PapersOptions } from '../sheets/sheetOptions.ts';
import { type Command, helpText, oneOf, readArguments } from './command.ts';
import { distinctName } from './distinctName.ts';
import { eachDesign } from './eachDesign.ts';
import { fonts } from './fonts.ts';
import { makeFolder } from './makeFolder.ts';
import { dayText, readDay } from './readDay.ts';
import { readPaper } from './readPaper.ts';
import { tellLetters } from './tellLetters.ts';
import { writeWhole } from './writeWhole.ts';

/** Writes each design's drawing and templates at full size. */
export const sheets: Command = {
  about: 'write the drawing and the templates at full size as PDF or SVG, or the plan as DXF',
  help: helpText(
    'sheets DESIGN.json… [options]',
    `Writes the papers of each design at full size: the drawing with its sections, and the templates, each with a
bar of 100 mm to measure before a print is relied on. No solid is built. - reads a design from stdin. Files
are named after the design's name and how its holes are, -2, -3 … added where two designs in one call are named alike; a file of
that name from an earlier call is replaced. Each file written is told on stdout, a line each. On every sheet
stands the design's fingerprint, eight figures that match papers and files.

  --out DIR             where the files go; made if it is missing (here)
  --format pdf|svg|dxf  one PDF of all sheets; an SVG of each sheet; or the bridge in plan as a DXF of
                        release 12 in mm, on layers, without paper (pdf)
  --as drilled|reamed   pin holes parallel as they leave the drill, or tapered by the reamer (drilled)
  --paper a4|letter     the paper, lying (a4)
  --units mm|in         what lengths are said in on the sheets (mm)
  --date YYYY-MM-DD     the day that stands on them and in them (today): same design, same day, same bytes
  --help                this`,
  ),
  async run(argv, io) {
    const { values, positionals } = readArguments(argv, {
      out: { type: 'string', default: '.' },
      format: { type: 'string', default: 'pdf' },
      as: { type: 'string', default: 'drilled' },
      paper: { type: 'string', default: 'a4' },
      units: { type: 'string', default: 'mm' },
      date: { type: 'string' },
    });
    const format = oneOf('--format', values.format, ['pdf', 'svg', 'dxf']);
    const day = readDay(values.date);
    const options = {
      paper: readPaper(values.paper),
      units: oneOf('--units', values.units, ['mm', 'in']),
      holes: oneOf('--as', values.as, ['drilled', 'reamed']),
      date: dayText(day),
    };
    const taken = new Set<string>();
    return eachDesign(positionals, io, async (accepted, place) => {
      if (format !== 'dxf') await tellLetters(accepted, place, io);
      const files = await FORMATS[format](accepted, options, day);
      await makeFolder(values.out);
      const name = distinctName(accepted.design.guitar.name, taken);
      for (const { name: end, bytes } of files) {
        const file = path.join(values.out, `${name}${holesEnd(options.holes)}_${end}`);
        await writeWhole(file, bytes);
        io.out(`${file}\n`);
      }
    });
  },
};

/** The files of a design in a format, named by what follows the design's name and its holes. */
type Write = (accepted: AcceptedDesign, options: PapersOptions, day: Date) => Promise<readonly FileEntry[]>;

const utf8 = (text: string) => new TextEncoder().encode(text);

const FORMATS: Readonly<Record<'pdf' | 'svg' | 'dxf', Write>> = {
  async pdf(accepted, options, date) {
    const typeface = await fonts();
    const title = `Sheets: ${accepted.design.guitar.name}`;
    const bytes = await writePdf(allSheets(accepted, typeface, options), typeface, { title, date });
    return [{ name: 'sheets.pdf', bytes }];
  },
  async svg(accepted, options) {
    const typeface = await fonts();
    return allSheets(accepted, typeface, options).map((sheet) => ({
      name: `${sheet.id}.svg`,
      bytes: utf8(writeSvg(sheet, typeface)),
    }));
  },
  async dxf(accepted, { holes, date }) {
    const title = partTitle(accepted, holes, date);
    return [{ name: 'plan.dxf', bytes: utf8(bridgeDxf(accepted, holes, title)) }];
  },
};
