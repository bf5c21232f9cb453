import { groundText } from '../making/groundText.ts';
import { measure } from '../report/said.ts';
import { toleranceText } from '../trade/toleranceText.ts';
import type { DesignSteps, SettingSteps } from './stepsOf.ts';
import { textTable } from './textTable.ts';
import { wrapText } from './wrapText.ts';

/** Columns of a terminal that is not narrow, and what stands below a step's title is set in by. */
const [WIDTH, IN] = [100, '  '];

/** The job by hand as a person reads it on a terminal. */
export function stepsTable({ name, fingerprint, steps, meaning }: DesignSteps): string {
  const cautions = new Map(steps.flatMap((step) => step.cautions.map(({ title, text }) => [title, text])));
  const paragraphs = [
    [`${name} · design ${fingerprint} · lengths in mm`],
    ...steps.map((step, i) => [`${i + 1}. ${step.title}`, ...stepLines(step).map((line) => IN + line)]),
    ...(meaning ? [['What the measured values mean', ...meaningLines(meaning)]] : []),
    ['Take care', ...listed([...cautions].map(([title, text]) => `${title}: ${text}`))],
  ];
  return `${paragraphs.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

function meaningLines({ text, tables }: NonNullable<DesignSteps['meaning']>): readonly string[] {
  return [
    ...listed(text.length > 0 ? text : ['Nothing is measured.']),
    ...tables.flatMap(({ title, head, rows }) => [
      '',
      `${IN}${title}`,
      ...textTable(head, rows).map((line) => IN + line),
    ]),
  ];
}

function stepLines(step: DesignSteps['steps'][number]): readonly string[] {
  const text = (line: string) => wrapText(line, WIDTH - IN.length);
  return [
    ...(step.cautions.length > 0
      ? text(`Take care: ${step.cautions.map(({ title }) => title).join(', ')} (see below).`)
      : []),
    ...text(`Needs: ${step.needs.join(', ')}.`),
    ...step.work.flatMap(text),
    ...settings(step.settings),
    ...text(`Check: ${step.check}`),
  ];
}

function settings(all: readonly SettingSteps[]): readonly string[] {
  if (all.length === 0) return [];
  const judged = all.some(({ judgement }) => judgement !== null);
  const unit = (one: SettingSteps, value: number) => measure(value, one.unit, one.decimals);
  const [heads = '', ...rows] = textTable(
    ['', 'wanted', 'tolerance', ...(judged ? ['measured', ''] : [])],
    all.map((one) => [
      one.label,
      unit(one, one.value),
      one.tolerance ? toleranceText(one.tolerance) : '',
      ...(judged ? [one.measured === null ? '' : unit(one, one.measured), one.judgement?.text ?? ''] : []),
    ]),
  );
  const grounds = all.map((one) =>
    wrapText(groundText(one), WIDTH - 2 * IN.length - 2).map((line) => IN + IN + line),
  );
  return [heads, ...rows.flatMap((row, i) => [row, ...(grounds[i] ?? [])])];
}

function listed(texts: readonly string[]): readonly string[] {
  return texts.flatMap((text) =>
    wrapText(text, WIDTH - 2).map((line, i) => `${i === 0 ? '- ' : '  '}${line}`),
  );
}
