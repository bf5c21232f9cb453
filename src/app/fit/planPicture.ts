import type { Curves } from '../../../models/curves/curves.ts';
import { type Point, pointAt } from '../../../models/curves/segment.ts';
import type { Crown } from '../../trade/fit/crowns.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { type Drawn, type Mark, stroke, WIDTH, word } from '../picture/mark.ts';
import { spacedLabels } from './spacedLabels.ts';

/** Room at both sides, px. */
const SIDE = 6;
/** Room for the strings' names over the plan, px. */
const HEAD = 16;
/** How far the plan goes on before the scale line and behind the pins, mm. */
const AHEAD = 3;
const BEHIND = 1.5;

/** px a millimetre across the bridge: both plans use it, so that they stand under one another. */
export function planScale({ slot, pins }: Curves): number {
  const half = Math.max(
    slot.halfLength * Math.cos(slot.angle) + slot.width / 2,
    ...pins.map((pin) => Math.abs(pin.at[0]) + pin.reach),
  );
  return (WIDTH / 2 - SIDE) / half;
}

/**
 * Strings, scale line, slot, crowns, what each string asks for, and pins in plan, to scale, the nut upward. A left-handed
 * guitar's stand mirrored, as its design does.
 */
export function planPicture(curves: Curves, fit: Fit, crowns: readonly Crown[], shown: number): Drawn {
  const scale = planScale(curves);
  const scaleLine = fit.slot.line.centreMm;
  const top = Math.max(scaleLine, slotTop(curves)) + AHEAD;
  const low = Math.min(...curves.pins.map((pin) => pin.at[1] - pin.reach)) - BEHIND;
  const at = ([x, y]: Point): Point => [WIDTH / 2 + scale * x, HEAD + scale * (top - y)];
  const names = spacedLabels(
    fit.strings.map(({ x }) => at([x, 0])[0]),
    shown,
  );
  const marks: Mark[] = [
    stroke('centreLine', 'chain', at([0, top]), at([0, low])),
    { ...stroke('slot', 'outline', ...slotPlan(curves).map(at)), closed: true, fill: 'sheet' } as Mark,
    ...curves.pins.map(
      (pin, i): Mark => ({
        kind: 'ring',
        name: `pin ${i + 1}`,
        pen: 'outline',
        at: at(pin.at),
        radius: scale * pin.reach,
      }),
    ),
    stroke('scaleLine', 'chain', [0, at([0, scaleLine])[1]], [WIDTH, at([0, scaleLine])[1]]),
    stroke('slotLine', 'blue', ...slotEnds(curves).map(at)),
  ];
  for (const [i, crown] of crowns.entries()) {
    const pin = curves.pins[i];
    const { x } = fit.strings[i] ?? { x: 0 };
    if (!pin) continue;
    const wanted: Point = [x, scaleLine - (fit.slot.wanted[i]?.saddleMm ?? 0)];
    marks.push(
      stroke(`string ${i + 1}`, i === shown ? 'strong' : 'detail', at([x, top]), at(crown.at), at(pin.at)),
      stroke(`wanted ${i + 1}`, 'outline', at([x - TICK, wanted[1]]), at([x + TICK, wanted[1]])),
      { kind: 'dot', name: `crown ${i + 1}`, pen: 'blue', at: at(crown.at), radius: 2 },
    );
    if (names.has(i))
      marks.push(word(`note ${i + 1}`, fit.strings[i]?.note ?? '', [at([x, 0])[0], HEAD - 4]));
  }
  return { height: HEAD + scale * (top - low), marks };
}

/** Half the width of the tick that a string's wanted place has, mm. */
const TICK = 1.6;

function slotTop({ slot }: Curves): number {
  return Math.abs(slot.halfLength * Math.sin(slot.angle)) + slot.width / 2;
}

/** The slot's middle from end to end on the top, mm. */
export function slotEnds({ slot }: Curves): readonly [Point, Point] {
  const [x, y] = [slot.halfLength * Math.cos(slot.angle), slot.halfLength * Math.sin(slot.angle)];
  return [
    [-x, -y],
    [x, y],
  ];
}

function slotPlan({ slot }: Curves): readonly Point[] {
  const [c, s] = [Math.cos(slot.angle), Math.sin(slot.angle)];
  return slot.plan.flatMap((piece) => {
    const steps = piece.kind === 'line' ? 1 : 12;
    return Array.from({ length: steps }, (_, i): Point => {
      const [u, v] = pointAt(piece, i / steps);
      return [u * c - v * s, u * s + v * c];
    });
  });
}
