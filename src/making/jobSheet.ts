import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { measure } from '../report/said.ts';
import { fingerprint } from '../sheets/fingerprint.ts';
import { boxLines, frameBox } from '../sheets/paper/frame.ts';
import { SMALL, words } from '../sheets/paper/inks.ts';
import type { Ink, Paper, Sheet, Typeface } from '../sheets/sheet.ts';
import { templateTitles } from '../sheets/templates/templateTitles.ts';
import { pageHead } from '../sheets/text/pageHead.ts';
import {
  baseLine,
  beside,
  boxed,
  gap,
  lineHeight,
  type Row,
  stacked,
  textBlock,
} from '../sheets/text/row.ts';
import { standing } from '../sheets/text/standing.ts';
import { textPages } from '../sheets/text/textPages.ts';
import { CAUTIONS, type CautionId, cautionFor } from '../trade/cautions.ts';
import { toleranceText } from '../trade/toleranceText.ts';
import { groundText } from './groundText.ts';
import { isMeasured } from './isMeasured.ts';
import type { Setting, Step } from './step.ts';

export interface PageOptions {
  readonly paper: Paper;
  /** As it is to be printed. */
  readonly date: string;
}

/** Heights of capitals, mm. */
const [BODY, TITLE] = [2.2, 3.2];
/** Side of a tick box, and height of the box for a measured value, mm. */
const [TICK, MEASURED] = [4.5, 5.6];
/** Where what belongs to a step stands, from the left edge, mm. */
const INDENT = 7;
/** From one paragraph to the next, mm. */
const PARAGRAPH = 0.7;
/** Widths of the last three columns, mm. */
const [WANTED, TOLERANCE, BOX] = [25, 28, 30];

/**
 * The job by hand as pages to take to the bench: what can hurt first, then each step with a box to tick, its settings and
 * a box for each measured value. The paper is stood upright.
 */
export function jobSheet(
  steps: readonly Step[],
  { design, text }: AcceptedDesign,
  typeface: Typeface,
  { paper, date }: PageOptions,
): readonly Sheet[] {
  const upright = standing(paper);
  const page = frameBox(upright);
  const name = design.guitar.name;
  const head = { ...page, title: 'Job by hand', name, fingerprint: fingerprint(text), date };
  return textPages({
    id: 'job',
    title: 'Job by hand',
    paper: upright,
    head: pageHead(head, typeface),
    rows: [
      ...opening(steps, design.timber.name, page, typeface),
      ...steps.flatMap((step, i) => stepRows(step, i + 1, page, typeface)),
    ],
  });
}

interface Edges {
  readonly left: number;
  readonly right: number;
}

const HOW =
  'Tick a step when it is done and write what you measured into its box. All lengths are millimetres. Typed back in, the measured values are held against their tolerances, with what they mean for action, intonation and strength.';

function opening(steps: readonly Step[], timber: string, page: Edges, typeface: Typeface): readonly Row[] {
  const named = new Set(steps.flatMap(({ cautions }) => cautions));
  const ids = (Object.keys(CAUTIONS) as CautionId[]).filter((id) => named.has(id));
  const inner = { left: page.left + 3, right: page.right - 3 };
  const cautions = ids.map((id) => {
    const { title, text } = cautionFor(id, timber);
    return beside([
      textBlock(title, { ...inner, right: inner.left + 26, height: BODY, bold: true }, typeface),
      textBlock(text, { ...inner, left: inner.left + 27, height: BODY }, typeface),
    ]);
  });
  return [
    textBlock(HOW, { ...page, height: BODY }, typeface),
    gap(2),
    boxed(
      [textBlock('Take care', { ...inner, height: TITLE, bold: true }, typeface), ...cautions],
      page,
      'frame',
      1.8,
    ),
    gap(3),
  ];
}

function stepRows(step: Step, number: number, page: Edges, typeface: Typeface): readonly Row[] {
  const body = { left: page.left + INDENT, right: page.right, height: BODY };
  const title: Row = {
    height: lineHeight(TITLE) + 1.5,
    keep: true,
    inks: (top) => [
      tick(page.left, top),
      words(`${number}. ${step.title}`, [body.left, baseLine(top, TITLE)], { height: TITLE, bold: true }),
    ],
  };
  const needs = [
    `Needs: ${step.needs.join(', ')}.`,
    ...(step.template ? [`Sheet “${templateTitles[step.template]}”.`] : []),
  ].join(' ');
  const take = step.cautions.map((id) => CAUTIONS[id].title).join(', ');
  const care = boxed(
    [
      textBlock(
        `Take care: ${take}. See the first page.`,
        { ...body, left: body.left + 2, right: page.right - 2, bold: true },
        typeface,
      ),
    ],
    { left: body.left, right: page.right },
    'frame',
    0.8,
    true,
  );
  const boxes = step.settings.some((setting) => isMeasured(setting, step));
  const heads = columnHeads(boxes, page);
  const goesOn = textBlock(`${number}. ${step.title}, continued`, { ...body, bold: true }, typeface);
  const called = stacked([gap(1.5), goesOn]);
  const again = stacked([called, heads]);
  const rows = step.settings.map((setting) => ({
    ...settingRow(setting, isMeasured(setting, step), page, typeface),
    again,
  }));
  const check = boxes
    ? textBlock(`Check: ${step.check}`, body, typeface)
    : checkWithBox(step, page, typeface);
  return [
    title,
    ...(take === '' ? [] : [care, gap(1, true)]),
    stacked([textBlock(needs, body, typeface), gap(PARAGRAPH)], true),
    ...step.work.map((line, i) => ({
      ...stacked([textBlock(line, body, typeface), gap(PARAGRAPH)], i < step.work.length - 1),
      again: called,
    })),
    ...(rows.length > 0 ? [{ ...heads, keep: true, again: called }] : []),
    ...rows,
    { ...stacked([gap(0.6), check]), again: called },
    gap(4.5),
  ];
}

function tick(left: number, top: number): Ink {
  return boxLines({ left, right: left + TICK, top, bottom: top - TICK }, 'frame');
}

/** The right edges of the columns for what is wanted and its tolerance, and the box's left edge. */
function columns({ right }: Edges) {
  const box = right - BOX;
  return { wanted: box - TOLERANCE - 2, tolerance: box - TOLERANCE + 2, box };
}

function columnHeads(boxes: boolean, page: Edges): Row {
  const at = columns(page);
  return {
    height: lineHeight(SMALL) + 0.4,
    inks: (top) => {
      const y = baseLine(top, SMALL);
      const small = { height: SMALL };
      return [
        words('Wanted', [at.wanted, y], { ...small, anchor: 'end' }),
        ...(boxes
          ? [words('Tolerance', [at.tolerance, y], small), words('Measured', [at.box, y], small)]
          : []),
      ];
    },
  };
}

function settingRow(setting: Setting, measured: boolean, page: Edges, typeface: Typeface): Row {
  const at = columns(page);
  const { value, decimals, unit } = setting;
  const label = { left: page.left + INDENT, right: at.wanted - WANTED };
  const said = stacked([
    textBlock(setting.label, { ...label, height: BODY }, typeface),
    textBlock(groundText(setting), { ...label, height: SMALL }, typeface),
    gap(0.8),
  ]);
  const wanted = measure(value, unit, decimals);
  const height = Math.max(said.height, measured ? MEASURED + 1 : 0);
  return {
    height,
    inks: (top) => {
      const y = baseLine(top, BODY);
      return [
        ...said.inks(top),
        words(wanted, [at.wanted, y], { height: BODY, bold: true, anchor: 'end' }),
        ...(setting.tolerance
          ? [words(toleranceText(setting.tolerance), [at.tolerance, y], { height: BODY })]
          : []),
        ...(measured
          ? [boxLines({ left: at.box, right: page.right, top, bottom: top - MEASURED }, 'detail')]
          : []),
      ];
    },
  };
}

/** A step that sets nothing to measure has a box for what its check finds. */
function checkWithBox(step: Step, page: Edges, typeface: Typeface): Row {
  const at = columns(page);
  const left = page.left + INDENT;
  const said = textBlock(`Check: ${step.check}`, { left, right: at.box - 3, height: BODY }, typeface);
  return {
    height: Math.max(said.height, MEASURED + 0.5),
    inks: (top) => [
      ...said.inks(top),
      boxLines({ left: at.box, right: page.right, top, bottom: top - MEASURED }, 'detail'),
    ],
  };
}
