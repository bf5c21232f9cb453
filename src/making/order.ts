import { DesignError, type Problem } from '../design/problem.ts';
import { describe } from '../design/read.ts';

/** What a CNC shop is asked for. */
export interface Order {
  /** Pieces, 1 to 999. */
  readonly quantity: number;
  /** ISO date, or blank. */
  readonly deadline: string;
  /** Up to 2000 characters in up to 40 lines, or blank. */
  readonly remarks: string;
  /** Whether the pin holes of the solid are as drilled or as reamed. */
  readonly holes: 'drilled' | 'reamed';
  /** What stands on the solid's top for sanding, whole hundredths of a mm (see `withAllowance`); 0 for none. */
  readonly sandingAllowance: number;
}

const USUAL_ORDER: Order = {
  quantity: 1,
  deadline: '',
  remarks: '',
  holes: 'drilled',
  sandingAllowance: 0,
};

const MOST_PIECES = 999;
const LONGEST_REMARKS = 2000;
/** What a note has room for beside its own. */
const MOST_LINES = 40;
/** mm */
const [LEAST_ALLOWANCE, MOST_ALLOWANCE] = [0.01, 0.5];
/** Everything that a terminal or a file's header would take for an order; lines and tabs are text. */
const CONTROL = /[^\P{Cc}\n\t]/u;

const RULES: Readonly<Record<keyof Order, { readonly allowed: string; readonly remedy: string }>> = {
  quantity: { allowed: `a whole number from 1 to ${MOST_PIECES}`, remedy: 'Say how many pieces are wanted.' },
  deadline: {
    allowed: 'a day such as 2031-05-17, or nothing',
    remedy: 'Write year-month-day, or leave it blank.',
  },
  remarks: {
    allowed: `text of up to ${LONGEST_REMARKS} characters in up to ${MOST_LINES} lines, or nothing`,
    remedy: 'Shorten it.',
  },
  holes: { allowed: 'drilled, reamed', remedy: 'Choose one of these.' },
  sandingAllowance: {
    allowed: `0, or ${LEAST_ALLOWANCE} to ${MOST_ALLOWANCE} mm`,
    remedy: 'Say what is to be left for sanding, to a hundredth.',
  },
};

/**
 * Reads an order from plain JSON; what is left out is as usual: one piece, as drilled, no allowance. An
 * allowance is rounded to a hundredth of a millimetre. Throws `DesignError`,
 * paths `order.…`, with every problem found.
 *
 * @param day on which it is placed (ISO): no deadline can be earlier; undefined for any
 */
export function readOrder(json: unknown, day?: string): Order {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    throw new DesignError([
      {
        code: 'not-a-value',
        path: 'order',
        value: describe(json),
        allowed: 'a group of fields',
        remedy: 'Give a group of fields, or nothing.',
      },
    ]);
  }
  const given: Readonly<Record<string, unknown>> = { ...USUAL_ORDER, ...json };
  const problems: Problem[] = Object.keys(given)
    .filter((key) => !Object.hasOwn(RULES, key))
    .map((key) => ({
      code: 'unknown-field',
      path: `order.${key.slice(0, 60)}`,
      value: 'an unknown field',
      allowed: Object.keys(RULES).join(', '),
      remedy: 'Check its spelling, or take it out.',
    }));
  const { quantity, deadline, remarks, holes, sandingAllowance } = given;
  const lines = typeof remarks === 'string' ? remarks.replace(/\r\n?/g, '\n') : remarks;
  const left =
    typeof sandingAllowance === 'number' ? Math.round(sandingAllowance * 100) / 100 : sandingAllowance;
  const right: Readonly<Record<keyof Order, boolean>> = {
    quantity: Number.isInteger(quantity) && inRange(quantity, 1, MOST_PIECES),
    deadline: deadline === '' || (isDay(deadline) && (day === undefined || deadline >= day)),
    remarks:
      typeof lines === 'string' &&
      [...lines].length <= LONGEST_REMARKS &&
      lines.split('\n').length <= MOST_LINES &&
      !CONTROL.test(lines),
    holes: holes === 'drilled' || holes === 'reamed',
    sandingAllowance: sandingAllowance === 0 || inRange(left, LEAST_ALLOWANCE, MOST_ALLOWANCE),
  };
  for (const key of Object.keys(RULES) as (keyof Order)[]) {
    if (!right[key]) problems.push(wrong(key, given[key], day));
  }
  if (problems.length > 0) throw new DesignError(problems);
  return { quantity, deadline, remarks: lines, holes, sandingAllowance: left } as Order;
}

function wrong(key: keyof Order, value: unknown, day: string | undefined): Problem {
  const code = key === 'holes' ? 'not-a-choice' : typeof value === 'number' ? 'out-of-range' : 'not-a-value';
  const said = { code, path: `order.${key}`, value: describe(value), ...RULES[key] } as const;
  if (key !== 'deadline' || day === undefined) return said;
  const allowed = `a day from ${day} on, or nothing`;
  return { ...said, allowed, ...(isDay(value) ? { code: 'out-of-range' } : {}) };
}

function inRange(value: unknown, least: number, most: number): boolean {
  return typeof value === 'number' && value >= least && value <= most;
}

/** Whether it is a day of the calendar as ISO 8601 writes it. */
function isDay(text: unknown): text is string {
  if (typeof text !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(text)) return false;
  const time = Date.parse(`${text}T00:00:00Z`);
  // 2031-02-30 would else pass for the 2nd of March
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(text);
}
