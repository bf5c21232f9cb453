import { backwards } from '../../../models/curves/chain.ts';
import { arc, type Chain, line, type Point } from '../../../models/curves/segment.ts';
import { slotFloor } from '../../../models/curves/slot.ts';
import { heightOn } from '../../../models/curves/topHeight.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { fitReport } from '../../trade/fit/fitReport.ts';
import type { SaddleBlank } from '../../trade/saddleBlank.ts';
import { lengthText, type Units } from '../lengthText.ts';
import { path, SMALL, stroke, words } from '../paper/inks.ts';
import type { Art } from './art.ts';
import { registration } from './registration.ts';
import { type SaddlePlace, saddleFromAbove, WIDENED } from './saddleFromAbove.ts';
import { saddleTable, saddleTableSize } from './saddleTable.ts';
import { templateTitles } from './templateTitles.ts';

/** Between the saddle's two views, and between these and the table, mm. */
const APART = 16;
/** Least distance between two strings' numbers, mm. */
const NUMBERS_APART = 3.6;

/**
 * The saddle from the tail with its top as the strings ask for it, and from above with the points it is filed to.
 * Undefined where the slot is too short for its strings, or no arc joins their heights.
 */
export function saddleTemplate({ design, curves, fit }: AcceptedDesign, units: Units): Art | undefined {
  const { saddle, crowns } = fitReport(design, curves, fit);
  const { top, blank, length } = saddle;
  if (!top || !blank) return undefined;
  const { slot } = curves;
  const say = (mm: number) => lengthText(mm, units);
  const strings = crowns.map(({ at, filed }): SaddlePlace => {
    const u = at[0] * Math.cos(slot.angle) + at[1] * Math.sin(slot.angle);
    return { u, filed, height: heightOn(top, u) };
  });
  const above = -APART - (slot.width * WIDENED) / 2;
  const tableTop = above - (slot.width * WIDENED) / 2 - 10;
  const size = saddleTableSize(strings.length);
  const half = Math.max(length, size.width) / 2 + 4;
  const box = { left: -half, right: half, bottom: tableTop - size.height, top: blank.finished + 9 };
  const marks = registration(box);
  const numbers = spread(strings.map(({ u }) => u));
  return {
    id: 'saddle',
    title: templateTitles.saddle,
    box: marks.box,
    notes: [
      blankText(blank, say),
      `Seen from the tail, the treble on the ${design.guitar.hand === 'left' ? 'left' : 'right'}; string 1 is the first (treble).`,
    ],
    inks: [
      ...marks.inks,
      stroke('saddle', 'detail', face(top, length, slot.floorRadius), true),
      path('centre', 'centre', [
        [0, -3],
        [0, blank.finished + 3],
      ]),
      ...strings.flatMap(({ u, height }, i) => [
        path('saddle', 'detail', [
          [u, height - 2],
          [u, height + 2],
        ]),
        words(String(i + 1), [numbers[i] ?? u, blank.finished + 4.4], { height: SMALL, anchor: 'middle' }),
      ]),
      ...saddleFromAbove(strings, length, slot.width, above),
      ...saddleTable(strings, tableTop, say),
    ],
  };
}

function blankText(
  { length, thickness, height, finished }: SaddleBlank,
  say: (mm: number) => string,
): string {
  const range = (least: number, most: number) => `${say(least)} to ${say(most)}`;
  return `Blank: ${range(length.least, length.most)} long, ${range(thickness.least, thickness.most)} thick, at least ${say(height)} high; finished ${say(finished)} at its highest.`;
}

/** The saddle's face: its foot as the slot's floor goes, its ends, its top. */
function face(top: Chain, length: number, floorRadius: number | undefined): Chain {
  const half = length / 2;
  const down = slotFloor({ angle: 0, tilt: 0, depth: 0, floorRadius }, half);
  const [left, right]: readonly [Point, Point] = [
    [-half, down],
    [half, down],
  ];
  const foot = floorRadius === undefined ? line(left, right) : arc(left, right, [0, -floorRadius], -1);
  const [first, last] = [top[0], top[top.length - 1]];
  if (!first || !last) return [foot];
  return [foot, line(right, last.to), ...backwards(top), line(first.from, left)];
}

/** Places for numbers, pushed apart to where they can be read. */
function spread(us: readonly number[]): readonly number[] {
  const order = us.map((u, i) => ({ u, i })).sort((a, b) => a.u - b.u);
  for (let round = 0; round < 60; round++) {
    order.slice(1).forEach((right, k) => {
      const left = order[k] as (typeof order)[number];
      const lack = NUMBERS_APART - (right.u - left.u);
      if (lack <= 0) return;
      left.u -= lack / 2;
      right.u += lack / 2;
    });
  }
  return us.map((_, i) => order.find((one) => one.i === i)?.u ?? 0);
}
