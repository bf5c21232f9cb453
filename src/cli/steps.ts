import path from 'node:path';
import { writePdf } from '../files/pdf.ts';
import { jobByHand } from '../making/jobByHand.ts';
import { jobSheet } from '../making/jobSheet.ts';
import { WORKSHOP } from '../making/workshop.ts';
import { type Command, helpText, readArguments } from './command.ts';
import { distinctName } from './distinctName.ts';
import { eachDesign } from './eachDesign.ts';
import { UseError } from './exit.ts';
import { fonts } from './fonts.ts';
import { inWorkshop } from './inWorkshop.ts';
import { makeFolder } from './makeFolder.ts';
import { dayText, readDay } from './readDay.ts';
import { readJsonAt } from './readJsonAt.ts';
import { readPaper } from './readPaper.ts';
import { type DesignSteps, stepsOf } from './stepsOf.ts';
import { stepsTable } from './stepsTable.ts';
import { tellLetters } from './tellLetters.ts';
import { workshopFor } from './workshopFor.ts';
import { writeWhole } from './writeWhole.ts';

const OPTIONS = Object.entries(WORKSHOP).map(([key, field]) => {
  const said =
    'choices' in field ? Object.keys(field.choices).join(' or ') : `${field.min} to ${field.max} mm`;
  // see `workshopFor`
  const usual = key === 'cutter' ? 'the widest usual one that the slot takes' : field.default;
  return `    ${key.padEnd(17)}${field.label}: ${said} (${usual})`;
});

/** Prints how a bridge is made by hand, step by step, or writes it as pages to take to the bench. */
export const steps: Command = {
  about: 'print the job by hand step by step, as JSON, a list or a PDF; judge measured values',
  help: helpText(
    'steps DESIGN.json… [options]',
    `Works out how each design is made by hand: every step in working order with its settings, from the blank to
reaming at set-up. Prints JSON on stdout, and nothing else there: one object for one design, an array for
several, in their order, without those that failed. No solid is built. - reads a design from stdin.

  name, fingerprint     of the design
  workshop              the tools it is worked out for, lengths in mm
  steps[]               in working order: id, title, work (what to do), check (what to measure), needs,
                        template (the sheet it works from, or null), and
    cautions[]          what can hurt: title, text
    settings[]          id, label, value, unit, decimals, formula, known (how; set: as typed), and
      tolerance         minus, plus, ground; null for what is only set or told
      measure           whether it is one to measure
      measured          what was; null when it was not
      judgement         off, beyond (its tolerance), within, text; null when it was not measured
  meaning               what the measured values mean for each string, the slot, stiffness and wood, with the
                        saddle's heights wanted now; text says it in words, tables string by string; null
                        without --measured

  --table               a list for a terminal instead of JSON
  --pdf                 pages to take to the bench instead, standing; each file written is told on stdout
  --json                JSON, as when nothing is said
  --out DIR             where PDFs go; made if it is missing (here)
  --paper a4|letter     their paper (a4)
  --date YYYY-MM-DD     the day that stands on them and in them (today)
  --workshop FILE       JSON of the tools at hand, any of these:
${OPTIONS.join('\n')}
  --measured FILE       JSON of measured values by the id of their setting: numbers, or text with a unit
  --help                this`,
  ),
  async run(argv, io) {
    const { values, positionals } = readArguments(argv, {
      json: { type: 'boolean', default: false },
      table: { type: 'boolean', default: false },
      pdf: { type: 'boolean', default: false },
      out: { type: 'string', default: '.' },
      paper: { type: 'string', default: 'a4' },
      date: { type: 'string' },
      workshop: { type: 'string' },
      measured: { type: 'string' },
    });
    const forms = (['json', 'table', 'pdf'] as const).filter((form) => values[form]);
    if (forms.length > 1)
      throw new UseError(`${forms.map((form) => `--${form}`).join(' and ')}: one of them at a time.`);
    const date = readDay(values.date);
    const paper = readPaper(values.paper);
    if (values.pdf && values.measured !== undefined)
      throw new UseError('--pdf and --measured: pages leave room for measured values, and carry none.');
    const workshop = await workshopFor(values.workshop);
    const measured =
      values.measured === undefined ? undefined : await readJsonAt('--measured', values.measured);

    const taken = new Set<string>();
    const made: DesignSteps[] = [];
    const exit = await eachDesign(positionals, io, async (accepted, place) => {
      const { saddle, guitar } = accepted.design;
      const here = workshop(saddle.slotWidth);
      if (!values.pdf) {
        made.push(inWorkshop(values.workshop, () => stepsOf(accepted, here, measured)));
        return;
      }
      await tellLetters(accepted, place, io);
      const typeface = await fonts();
      const job = inWorkshop(values.workshop, () => jobByHand(accepted, here));
      const pages = jobSheet(job, accepted, typeface, { paper, date: dayText(date) });
      const bytes = await writePdf(pages, typeface, { title: `Job by hand: ${guitar.name}`, date });
      await makeFolder(values.out);
      const file = path.join(values.out, `${distinctName(guitar.name, taken)}_job-by-hand.pdf`);
      await writeWhole(file, bytes);
      io.out(`${file}\n`);
    });
    if (values.table) io.out(made.map(stepsTable).join('\n\n'));
    else if (!values.pdf) {
      const printed = positionals.length === 1 ? made[0] : made;
      if (printed !== undefined) io.out(`${JSON.stringify(printed, null, 2)}\n`);
    }
    return exit;
  },
};
