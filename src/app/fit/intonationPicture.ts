import type { Point } from '../../../models/curves/segment.ts';
import { fixed } from '../../report/said.ts';
import type { Crown } from '../../trade/fit/crowns.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { type Drawn, type Mark, type Pen, stroke, WIDTH, word } from '../picture/mark.ts';

const HEIGHT = 184;
/** The plot's own box, px. */
const BOX = { left: 30, right: WIDTH - 30, top: 26, bottom: HEIGHT - 30 } as const;
/** Steps between the cents that are written, the first that leaves few enough of them. */
const STEPS = [0.5, 1, 2, 5, 10, 20, 50] as const;
const MOST_TICKS = 6;
/** The least range of cents that is drawn, so that hundredths don't look like faults. */
const LEAST_RANGE = 2;
/** Frets that are written. */
const WRITTEN = [1, 3, 5, 7, 9, 12] as const;
/** Height of a line of text, px. */
const LINE = 12;

/** The three ways in which a string's errors are drawn, back to front. */
export const WAYS = ['bare', 'onSlot', 'filed'] as const;
export type Way = (typeof WAYS)[number];
const PENS: Readonly<Record<Way, Pen>> = { bare: 'hidden', onSlot: 'outline', filed: 'strong' };

/**
 * Cents by fret, 1 to 12, against equal temperament: without compensation, with the crown on the slot's middle, and
 * where it stands. Of one string, or of all of them.
 */
export function intonationPicture(fit: Fit, crowns: readonly Crown[], shown: number, all: boolean): Drawn {
  const drawn = crowns.flatMap((crown, i) => (all || i === shown ? [{ i, cents: crown.cents }] : []));
  const values = drawn.flatMap(({ cents }) => WAYS.flatMap((way) => cents[way]));
  const range = rangeOf(values);
  const across = (fret: number) => BOX.left + ((fret - 1) * (BOX.right - BOX.left)) / 11;
  const up = (cents: number) =>
    BOX.bottom - ((cents - range.low) * (BOX.bottom - BOX.top)) / (range.high - range.low);
  const marks: Mark[] = [
    word('unit', 'cents', [0, 10], 'start', 'soft'),
    word('frets', 'fret', [across(10.5), BOX.bottom + 14], 'middle', 'soft'),
  ];
  for (const cents of range.ticks) {
    const zero = cents === 0;
    marks.push(
      stroke(
        zero ? 'zero' : `tick ${cents}`,
        zero ? 'detail' : 'faint',
        [BOX.left, up(cents)],
        [BOX.right, up(cents)],
      ),
      word(
        `cents ${cents}`,
        tick(cents, range.step),
        [BOX.left - 5, up(cents) + 4],
        'end',
        zero ? 'ink' : 'soft',
      ),
    );
  }
  for (let fret = 1; fret <= 12; fret++) {
    marks.push(stroke(`fret ${fret}`, 'faint', [across(fret), BOX.bottom], [across(fret), BOX.bottom + 3]));
    if ((WRITTEN as readonly number[]).includes(fret))
      marks.push(word(`fret name ${fret}`, String(fret), [across(fret), BOX.bottom + 14], 'middle', 'soft'));
  }
  for (const way of WAYS) {
    for (const { i, cents } of drawn) {
      const points = cents[way].map((c, k): Point => [across(k + 1), up(c)]);
      const line = stroke(`${way} ${i + 1}`, PENS[way], ...points);
      marks.push(all && i !== shown && line.kind === 'line' ? { ...line, width: 0.8 } : line);
    }
  }
  const names = drawn.map(({ i, cents }) => ({ i, at: up(cents.bare[11] ?? 0) }));
  for (const { i, at } of apart(names))
    marks.push(
      word(
        `note ${i + 1}`,
        fit.strings[i]?.note ?? '',
        [BOX.right + 4, at + 4],
        'start',
        i === shown ? 'ink' : 'soft',
      ),
    );
  return { height: HEIGHT, marks };
}

interface Range {
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly ticks: readonly number[];
}

/** From the tick below to the tick above all values, zero always among them. */
function rangeOf(values: readonly number[]): Range {
  const [least, most] = [Math.min(0, ...values), Math.max(0, ...values)];
  const span = Math.max(LEAST_RANGE, most - least);
  const step = STEPS.find((s) => span / s <= MOST_TICKS) ?? span / MOST_TICKS;
  const first = Math.floor(least / step);
  const last = Math.max(Math.ceil(most / step), first + Math.ceil(LEAST_RANGE / step));
  return {
    low: first * step,
    high: last * step,
    step,
    ticks: Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step),
  };
}

function tick(cents: number, step: number): string {
  const text = fixed(cents, step < 1 ? 1 : 0);
  return cents > 0 ? `+${text}` : text;
}

/** Names at the lines' ends, moved down where they would stand on one another, and up again from the foot. */
function apart(
  names: readonly { readonly i: number; readonly at: number }[],
): readonly { readonly i: number; readonly at: number }[] {
  const sorted = [...names].sort((a, b) => a.at - b.at).map((name) => ({ ...name }));
  for (const [k, name] of sorted.entries()) {
    const above = sorted[k - 1];
    if (above) name.at = Math.max(name.at, above.at + LINE);
  }
  const lowest = BOX.bottom - 4;
  const over = (sorted[sorted.length - 1]?.at ?? 0) - lowest;
  let most: number = lowest;
  if (over > 0)
    for (const name of sorted.reverse()) {
      name.at = Math.min(name.at, most);
      most = name.at - LINE;
    }
  return sorted;
}
