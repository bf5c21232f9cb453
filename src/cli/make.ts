import path from 'node:path';
import { DEVIATION_MM, type FileOptions } from '../../workers/protocol.ts';
import { type Command, helpText, oneOf, readArguments } from './command.ts';
import { distinctName } from './distinctName.ts';
import { eachDesign } from './eachDesign.ts';
import { UseError } from './exit.ts';
import { kernelSource } from './kernelSource.ts';
import { makeFolder } from './makeFolder.ts';
import { readDeviation } from './readDeviation.ts';
import { writeWhole } from './writeWhole.ts';

/** Writes the exact solid of each design as STEP, STL or both. */
export const make: Command = {
  about: 'write the exact solid as STEP and STL',
  help: helpText(
    'make DESIGN.json… --out DIR [options]',
    `Builds the exact solid of each design, checks it and writes it. - reads a design from stdin. Files are
named after the design's name, -2, -3 … added where two designs in one call are named alike; a file of
that name from an earlier call is replaced. Each file written is told on stdout, a line each. A design
that fails is told on stderr, and the others are still made.

  --out DIR             where the files go; made if it is missing
  --as drilled|reamed   pin holes parallel as they leave the drill, or tapered by the reamer (drilled)
  --step                write STEP (both, when neither is asked for)
  --stl                 write STL, binary, in millimetres
  --deviation MM        how far an STL's facets may stray from the solid, ${DEVIATION_MM.least} to ${DEVIATION_MM.most} (${DEVIATION_MM.usual})
  --schema AP214|AP242  which STEP; AP214 is read everywhere (AP214)
  --help                this`,
  ),
  async run(argv, io) {
    const { values, positionals } = readArguments(argv, {
      out: { type: 'string' },
      as: { type: 'string', default: 'drilled' },
      step: { type: 'boolean', default: false },
      stl: { type: 'boolean', default: false },
      deviation: { type: 'string' },
      schema: { type: 'string', default: 'AP214' },
    });
    const folder = values.out;
    if (!folder) throw new UseError('--out DIR is missing: where shall the files go?');
    const holes = oneOf('--as', values.as, ['drilled', 'reamed']);
    const schema = oneOf('--schema', values.schema, ['AP214', 'AP242']);
    const deviationMm = readDeviation(values.deviation);
    const both = !values.step && !values.stl;
    const wanted: FileOptions[] = [];
    if (both || values.step) wanted.push({ format: 'step', holes, schema });
    if (both || values.stl) wanted.push({ format: 'stl', holes, deviationMm });

    const kernel = kernelSource();
    const taken = new Set<string>();
    return eachDesign(positionals, io, async ({ text, design }) => {
      await makeFolder(folder);
      const name = distinctName(design.guitar.name, taken);
      for (const options of wanted) {
        const file = await kernel.use((geometry) => geometry.file(text, { ...options, name }));
        const place = path.join(folder, file.name);
        await writeWhole(place, file.bytes);
        io.out(`${place}\n`);
      }
    });
  },
};
