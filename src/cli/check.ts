import { checkOf, type DesignCheck } from './checkOf.ts';
import { checkTable } from './checkTable.ts';
import { type Command, helpText, readArguments } from './command.ts';
import { eachDesign } from './eachDesign.ts';
import { EXIT } from './exit.ts';

/** Holds each design against the trade's rules and prints what they find, as JSON or as tables. */
export const check: Command = {
  about: 'hold a design against the trade’s rules and the limits it carries, as JSON or a table',
  help: helpText(
    'check DESIGN.json… [--table]',
    `Holds each design against the trade's rules and prints as JSON on stdout, and nothing else there, what they
find: one object for one design, an array for several, in their order, without those that failed. No solid is
built. - reads a design from stdin. The limits are the design's own (its group limits); what they come from is
said with each finding.

  name                     the design's name
  counts                   how many findings: error, warning, note
  findings[]               errors first
    id                     of the rule, stable
    severity               error: it can't work as designed; warning: beyond what is usual and sound; note:
                           unusual, or good to know
    text                   what was found, and what it means at the bench
    found, limit           the number found, and what it is held against, with units
    source                 who says so
    path                   the field to look at
    limitPath              the field of the limit; null when it can't be changed
    place                  where on the part: lines of points x, y, z, mm; empty when it is about the whole
    mends                  fields of which a single number may mend it
    remedy                 path, value (mm, degrees, g), text, and changes: what to type into which fields;
                           null when no single number mends it

A design with an error ends with exit code 1, as one that can't be made does.

  --table                  a list for a terminal instead of JSON
  --help                   this`,
  ),
  async run(argv, io) {
    const { values, positionals } = readArguments(argv, { table: { type: 'boolean', default: false } });
    const made: DesignCheck[] = [];
    const exit = await eachDesign(positionals, io, async (accepted) => {
      made.push(checkOf(accepted));
    });
    if (values.table) io.out(made.map(checkTable).join('\n\n'));
    else {
      const printed = positionals.length === 1 ? made[0] : made;
      if (printed !== undefined) io.out(`${JSON.stringify(printed, null, 2)}\n`);
    }
    const wrong = made.some(({ counts }) => counts.error > 0);
    return wrong && exit < EXIT.design ? EXIT.design : exit;
  },
};
