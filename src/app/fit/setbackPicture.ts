import type { Curves } from '../../../models/curves/curves.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { handSign } from '../../../models/curves/slot.ts';
import type { Design } from '../../design/design.ts';
import { fixed } from '../../report/said.ts';
import type { Crown } from '../../trade/fit/crowns.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { type Drawn, type Mark, stroke, WIDTH, word } from '../picture/mark.ts';
import { planScale, slotEnds } from './planPicture.ts';
import { spacedLabels } from './spacedLabels.ts';

/** How many times larger the way along the strings may be drawn, the most wanted first. */
const TIMES = [10, 5, 4, 3, 2, 1] as const;
/** Most height that the set-backs may take, px. */
const MOST = 165;
const HEAD = 16;
const FOOT = 20;
/** Air over the scale line and below the lowest mark, px. */
const AIR = 5;
/** Least distance between two set-backs' numbers, px. */
const NUMBER = 31;

export interface SetbackDrawn extends Drawn {
  /** How much larger than across the bridge the way along the strings is drawn. */
  readonly times: number;
}

/**
 * The set-backs under the plan, larger along the strings than across: from the scale line to the slot's middle and walls,
 * to what each string asks for, and to where its crown stands; the slot by α = 1 beside it.
 */
export function setbackPicture(
  design: Design,
  curves: Curves,
  fit: Fit,
  crowns: readonly Crown[],
  shown: number,
): SetbackDrawn {
  const scale = planScale(curves);
  const { line, least, wanted } = fit.slot;
  const { slot } = curves;
  const aside = slot.width / 2 / Math.cos(slot.tilt) / Math.cos(slot.angle);
  const ends = slotEnds(curves);
  // set-backs run downward, away from the nut
  const walls = ends.map(([x, y]): Point => [x, line.centreMm - y]);
  const leastSlope = handSign(design) * Math.tan((least.angleDeg * Math.PI) / 180);
  const leastAt = (x: number) => least.centreMm - x * leastSlope;
  const places = crowns.map(({ at }) => line.centreMm - at[1]);
  const all = [
    0,
    ...places,
    ...wanted.map(({ saddleMm }) => saddleMm),
    ...walls.flatMap(([, s]) => [s - aside, s + aside]),
    ...ends.map(([x]) => leastAt(x)),
  ];
  const [first, last] = [Math.min(...all), Math.max(...all)];
  const times = TIMES.find((n) => (last - first) * scale * n <= MOST) ?? 1;
  const tall = scale * times;
  const at = ([x, setback]: Point): Point => [WIDTH / 2 + scale * x, HEAD + AIR + tall * (setback - first)];
  const height = HEAD + 2 * AIR + tall * (last - first) + FOOT;
  const wall = (by: number) => walls.map(([x, s]): Point => at([x, s + by]));
  const xs = fit.strings.map(({ x }) => x);
  const across = xs.map((x) => at([x, 0])[0]);
  const names = spacedLabels(across, shown);
  const numbers = spacedLabels(across, shown, NUMBER);
  const bottom = height - FOOT;
  const marks: Mark[] = [
    {
      kind: 'line',
      name: 'slot',
      pen: 'detail',
      points: [...wall(-aside), ...wall(aside).reverse()],
      closed: true,
      fill: 'bone',
    },
    stroke('scaleLine', 'chain', [0, at([0, 0])[1]], [WIDTH, at([0, 0])[1]]),
    ...xs.map((x, i) =>
      stroke(
        `string ${i + 1}`,
        i === shown ? 'detail' : 'faint',
        [at([x, 0])[0], HEAD],
        [at([x, 0])[0], bottom],
      ),
    ),
    stroke('least', 'blueHidden', ...ends.map(([x]) => at([x, leastAt(x)]))),
    stroke('slotLine', 'blue', ...walls.map(at)),
  ];
  for (const [i, x] of xs.entries()) {
    const asked = wanted[i]?.saddleMm ?? 0;
    const onSlot = fit.slot.residuals[i]?.onSlotMm ?? 0;
    marks.push(
      stroke(`residual ${i + 1}`, 'strong', at([x, onSlot]), at([x, asked])),
      { kind: 'ring', name: `wanted ${i + 1}`, pen: 'outline', at: at([x, asked]), radius: 4 },
      { kind: 'dot', name: `crown ${i + 1}`, pen: 'blue', at: at([x, places[i] ?? 0]), radius: 2.4 },
    );
    const tone = i === shown ? 'ink' : 'soft';
    if (names.has(i))
      marks.push(
        word(`note ${i + 1}`, fit.strings[i]?.note ?? '', [at([x, 0])[0], HEAD - 5], 'middle', tone),
      );
    if (numbers.has(i))
      marks.push(word(`asked ${i + 1}`, fixed(asked, 2), [at([x, 0])[0], height - 6], 'middle', tone));
  }
  return { height, marks, times };
}
