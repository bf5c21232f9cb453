import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { StiffnessAt } from '../report/bendingFigures.ts';
import { type Comparison, comparison, type Weighed } from '../report/compare/comparison.ts';
import { DECIMALS, sayValue } from '../report/compare/sayValue.ts';
import { partFigures } from '../report/partFigures.ts';
import { fixed, plain, signed } from '../report/said.ts';
import { fitReport } from '../trade/fit/fitReport.ts';
import { LOAD_CAUTION } from '../trade/loadCaution.ts';
import { type Command, helpText, readArguments } from './command.ts';
import { eachDesign } from './eachDesign.ts';
import { EXIT, UseError } from './exit.ts';
import { textTable } from './textTable.ts';
import { wrapText } from './wrapText.ts';

/** What `compare` prints. */
interface DesignComparison extends Comparison {
  readonly names: { readonly a: string; readonly b: string };
  /** Along each bridge, from tip to tip. */
  readonly stiffness: { readonly a: readonly StiffnessAt[]; readonly b: readonly StiffnessAt[] };
  readonly caution: string;
}

/** Prints two designs side by side, as JSON or as tables. */
export const compare: Command = {
  about: 'print two designs side by side: dimensions, weight, stiffness, load',
  help: helpText(
    'compare A.json B.json [--table]',
    `Prints as JSON on stdout, and nothing else there, how B differs from A, which stands for the bridge that is known.
No solid is built. - reads a design from stdin.

  names                    of both designs: a, b
  differences[]            every field in which they differ, solved numbers as they came out:
    path, label, unit      of the field
    a, b                   a number, a word, or a list of either by string; null where the field isn't used
    by                     b less a, where both are numbers
  figures[]                what each comes to, pin holes as reamed unless said otherwise:
    id, label, unit        which figure; decimals says how finely it is usually shown
    formula, load          id of its formula; whether it is a load, for which the caution holds
    estimate               whether it is no more than an estimate
    a, b, share            both values, and b as a share of a; no share where a is 0
  stiffness                a and b: bending stiffness E·I along the bridge, x in mm, stiffnessNm2 in N·m²
  caution                  what must be said wherever load figures are shown

  --table                  tables for a terminal instead of JSON
  --help                   this`,
  ),
  async run(argv, io) {
    const { values, positionals } = readArguments(argv, { table: { type: 'boolean', default: false } });
    if (positionals.length !== 2)
      throw new UseError(`Two designs are compared; ${positionals.length} given.`);
    const read: AcceptedDesign[] = [];
    const exit = await eachDesign(positionals, io, async (accepted) => {
      read.push(accepted);
    });
    const [a, b] = read.map(weighed);
    if (exit !== EXIT.done || !a || !b) return exit;
    const compared: DesignComparison = {
      names: { a: a.accepted.design.guitar.name, b: b.accepted.design.guitar.name },
      ...comparison(a, b),
      stiffness: { a: a.figures.bending.along, b: b.figures.bending.along },
      caution: LOAD_CAUTION,
    };
    io.out(values.table ? tableOf(compared) : `${JSON.stringify(compared, null, 2)}\n`);
    return exit;
  },
};

function weighed(accepted: AcceptedDesign): Weighed {
  const { design, curves, fit } = accepted;
  return { accepted, figures: partFigures(accepted, fitReport(design, curves, fit)) };
}

function tableOf({ names, differences, figures }: DesignComparison): string {
  const unit = (one: { readonly label: string; readonly unit: string }) =>
    one.unit === '' ? one.label : `${one.label}, ${one.unit}`;
  const changed = differences.map((one) => [
    unit(one),
    sayValue(one.a),
    sayValue(one.b),
    one.by === undefined ? '' : signed(one.by, DECIMALS, plain),
  ]);
  const numbers = figures.map((one) => [
    one.estimate ? `${unit(one)} (estimate)` : unit(one),
    fixed(one.a, one.decimals),
    fixed(one.b, one.decimals),
    one.share === undefined ? '' : `${fixed(100 * one.share, 1)} %`,
  ]);
  const blocks = [
    [`A ${names.a}`, `B ${names.b}`],
    changed.length === 0 ? ['No dimension differs.'] : textTable(['Differs', 'A', 'B', 'B less A'], changed),
    textTable(['Comes to', 'A', 'B', 'B of A'], numbers),
    wrapText(LOAD_CAUTION, 100),
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
