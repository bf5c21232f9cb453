import { type Field, UNIT_OF } from './fields/kinds.ts';
import { FIELDS } from './fields.ts';

/** One thing wrong with a design, addressed so that a form, a command line and a file loader can all show it. */
export interface Problem {
  /** What kind of thing is wrong; stable, for programs. */
  readonly code:
    | 'unknown-field'
    | 'missing-field'
    | 'not-a-value'
    | 'wrong-unit'
    | 'out-of-range'
    | 'not-a-choice'
    | 'does-not-fit'
    | 'not-a-design'
    | 'broken-file'
    | 'newer-version';
  /** Where: `group.field`, or '' for the whole design. */
  readonly path: string;
  /** What was given, as text. */
  readonly value: string;
  /** What is allowed, in a few words with units. */
  readonly allowed: string;
  /** What to do about it. */
  readonly remedy: string;
}

/** A design that can't be made as given. Carries every problem found, never only the first. */
export class DesignError extends Error {
  override readonly name = 'DesignError';
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map(sayProblem).join('\n'));
  }
}

/** One line for a person: where, what was given, what is allowed, what to do. */
export function sayProblem(p: Problem): string {
  return `${p.path === '' ? 'design' : p.path}: ${sayGiven(p)}. ${mend(p)}`;
}

function sayGiven(p: Problem): string {
  const { code, value } = p;
  switch (code) {
    case 'unknown-field':
      return 'there is no such field';
    case 'missing-field':
      return value === 'nothing' ? 'missing' : `${value} is given`;
    case 'not-a-design':
      return `this is not a bridge design, but ${value}`;
    case 'broken-file':
      return `it can't be read: ${value}`;
    case 'does-not-fit':
      return `${value} does not fit`;
    default:
      return `${given(p)} is given`;
  }
}

/** What is allowed and what to do about it, said once where the remedy already says what is allowed. */
export function mend({ code, allowed, remedy }: Problem): string {
  if (remedy.includes(allowed)) return remedy;
  switch (code) {
    case 'does-not-fit':
      return `${allowed.charAt(0).toUpperCase()}${allowed.slice(1)}. ${remedy}`;
    case 'unknown-field':
      return `There are: ${allowed}. ${remedy}`;
    default:
      return `Allowed: ${allowed}. ${remedy}`;
  }
}

/** What was given, in a word where it was nothing. */
export function given({ value }: Problem): string {
  return value === '""' ? 'nothing' : value;
}

/** The problem of two or more dimensions that can't stand together. */
export function misfit(path: string, value: number | string, allowed: string, remedy: string): Problem {
  // one place more than a bench reads, so that 3.204 beside "at most 3.2" is no riddle
  const said = typeof value === 'number' ? `${Math.round(value * 1000) / 1000}` : value;
  return { code: 'does-not-fit', path, value: said, allowed, remedy };
}

/**
 * A dimension that is too great beside the others: says how much is allowed, rounded down so that the number said is
 * itself allowed, or that none of the field's range will do. `why` completes "at most 3.2 mm …".
 */
export function tooMuch(path: string, value: number, most: number, why: string, remedy: string): Problem {
  const said = Math.floor(most * 100) / 100;
  return misfit(path, value, limit(path, 'at most', said, why), remedy);
}

/** A dimension that is too little beside the others, as `tooMuch`: the number said is rounded up. */
export function tooLittle(path: string, value: number, least: number, why: string, remedy: string): Problem {
  const said = Math.ceil(least * 100) / 100;
  return misfit(path, value, limit(path, 'at least', said, why), remedy);
}

/** How finely the nearest allowed value is looked for before it is narrowed down. */
const SEARCH_STEPS = 60;

/** Whether any value of the field, of those that `unfitting` looks at, passes. */
export function anyFits(path: string, fits: (value: number) => boolean): boolean {
  const { min, max } = rangeOf(path);
  return Array.from({ length: SEARCH_STEPS + 1 }, (_, i) => min + (i * (max - min)) / SEARCH_STEPS).some(
    fits,
  );
}

/**
 * A dimension that doesn't fit for a reason that gives no formula: the nearest value of the field that does is searched
 * for and said.
 *
 * @param fits whether a value of this field, the others as they are, passes the check that failed
 */
export function unfitting(
  path: string,
  value: number,
  fits: (value: number) => boolean,
  why: string,
  remedy: string,
): Problem {
  const { min, max } = rangeOf(path);
  const step = (max - min) / SEARCH_STEPS;
  let best: number | undefined;
  for (let i = 0; i <= SEARCH_STEPS; i++) {
    const x = min + i * step;
    if ((best === undefined || Math.abs(x - value) < Math.abs(best - value)) && fits(x)) best = x;
  }
  if (best === undefined) return misfit(path, value, noneOf(path, why), remedy);
  let bad = Math.abs(best - value) > step ? best + Math.sign(value - best) * step : value;
  while (Math.abs(best - bad) > 0.002) {
    const middle: number = (best + bad) / 2;
    if (fits(middle)) best = middle;
    else bad = middle;
  }
  return best < value ? tooMuch(path, value, best, why, remedy) : tooLittle(path, value, best, why, remedy);
}

function limit(path: string, words: 'at most' | 'at least', said: number, why: string): string {
  const { min, max } = rangeOf(path);
  const possible = words === 'at most' ? said >= min : said <= max;
  return possible ? `${words} ${said}${unitOf(path)} ${why}` : noneOf(path, why);
}

function noneOf(path: string, why: string): string {
  const { min, max } = rangeOf(path);
  const { label } = fieldAt(path);
  return `no ${label.charAt(0).toLowerCase()}${label.slice(1)} from ${min} to ${max}${unitOf(path)} will do ${why}`;
}

function fieldAt(path: string): Field {
  const [group = '', key = ''] = path.split('.');
  const fields: Readonly<Record<string, Readonly<Record<string, Field>>>> = FIELDS;
  const field = fields[group]?.[key];
  if (!field) throw new Error(`the table of fields has no ${path}`);
  return field;
}

/** Least and greatest value of a number's field, in its own unit. */
export function rangeOf(path: string): { readonly min: number; readonly max: number } {
  const field = fieldAt(path);
  if (!('min' in field)) throw new Error(`${path} is no number`);
  return field;
}

function unitOf(path: string): string {
  const { kind } = fieldAt(path);
  const unit = kind in UNIT_OF ? UNIT_OF[kind as keyof typeof UNIT_OF] : '';
  return unit === '' || unit === '°' ? unit : ` ${unit}`;
}

/** A number as a person would write it at the bench: at most two decimals. */
export function roundForReading(value: number): number {
  return Math.round(value * 100) / 100;
}
