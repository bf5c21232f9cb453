import path from 'node:path';
import { packet as packetOf } from '../files/packet.ts';
import { packetName } from '../files/packetNames.ts';
import { orderFor } from '../making/orderFor.ts';
import { withAllowance } from '../making/withAllowance.ts';
import { type Command, helpText, oneOf, readArguments } from './command.ts';
import { distinctName } from './distinctName.ts';
import { eachDesign } from './eachDesign.ts';
import { fonts } from './fonts.ts';
import { kernelSource } from './kernelSource.ts';
import { makeFolder } from './makeFolder.ts';
import { dayText, readDay } from './readDay.ts';
import { readOrderOptions } from './readOrderOptions.ts';
import { readPaper } from './readPaper.ts';
import { tellLetters } from './tellLetters.ts';
import { writeWhole } from './writeWhole.ts';

/** Writes everything that a CNC shop needs for each design as one ZIP. */
export const packet: Command = {
  about: 'write one ZIP for a CNC shop: solid, drawing, job note, dimensions, manifest',
  help: helpText(
    'packet DESIGN.json… --quantity N [options]',
    `Builds the exact solid of each design, checks it and writes one ZIP with all that a CNC shop needs: STEP, STL,
3MF, the plan as DXF, the drawing and a job note as PDF, the table of dimensions as CSV and JSON, the design
file, and a manifest with the size and SHA-256 of each. - reads a design from stdin. Every name says which
design, holes as drilled or as reamed, and whether wood is left for sanding; -2, -3 … is added where two
designs in one call are named alike. Each ZIP is told on stdout, a line each. A design that fails is told on
stderr, and the others are still made.

  --quantity N          pieces wanted, 1 to 999
  --deadline YYYY-MM-DD wanted by, no earlier than --date (none)
  --remarks TEXT        what else the shop shall know, up to 2000 characters and 40 lines (none)
  --as drilled|reamed   pin holes parallel as they leave the drill, or tapered by the reamer (drilled); a reamer
                        that would take nothing off leaves them as drilled, and the packet says so
  --allowance MM        wood left on the top alone for sanding, 0.01 to 0.5 by 0.01; sides, glue face, slot and holes
                        are to size in any case (0)
  --paper a4|letter     of the drawing and the note (a4)
  --units mm|in         what lengths are said in on the drawing (mm)
  --date YYYY-MM-DD     the day that stands in every file (today): same design, order and day, same bytes
  --out DIR             where the ZIPs go; made if it is missing (here)
  --help                this`,
  ),
  async run(argv, io) {
    const { values, positionals } = readArguments(argv, {
      quantity: { type: 'string' },
      deadline: { type: 'string' },
      remarks: { type: 'string' },
      as: { type: 'string' },
      allowance: { type: 'string' },
      paper: { type: 'string', default: 'a4' },
      units: { type: 'string', default: 'mm' },
      date: { type: 'string' },
      out: { type: 'string', default: '.' },
    });
    const { quantity, deadline, remarks, as, allowance } = values;
    const typed = { quantity, deadline, remarks, holes: as, sandingAllowance: allowance };
    const paper = readPaper(values.paper);
    const units = oneOf('--units', values.units, ['mm', 'in']);
    const date = readDay(values.date);
    const order = readOrderOptions(typed, dayText(date));

    const kernel = kernelSource();
    const taken = new Set<string>();
    return eachDesign(positionals, io, async (accepted, place) => {
      const { holes, sandingAllowance } = orderFor(accepted.design, order);
      const { text } = withAllowance(accepted, sandingAllowance);
      const typeface = await fonts();
      await tellLetters(accepted, place, io, order.remarks);
      const solid = await kernel.use(async (geometry) => ({
        mesh: (await geometry.solid(text, holes)).mesh,
        step: (await geometry.file(text, { format: 'step', holes, written: date })).bytes,
        stl: (await geometry.file(text, { format: 'stl', holes })).bytes,
      }));
      const called = distinctName(accepted.design.guitar.name, taken, packetName);
      const made = await packetOf({ accepted, order, called, date, paper, typeface, units, ...solid });
      await makeFolder(values.out);
      const file = path.join(values.out, made.name);
      await writeWhole(file, made.bytes);
      io.out(`${file}\n`);
    });
  },
};
