import type { Design } from '../../src/design/design.ts';
import { type Problem, tooMuch, unfitting } from '../../src/design/problem.ts';
import { drawChannel } from './channels.ts';
import type { Channel, Curves } from './curves.ts';
import { woodAtPins } from './pinClearance.ts';
import { LEAST_BETWEEN, LEAST_WOOD } from './pins.ts';
import { gapBetween, gapToCircle, type Polygon } from './polygons.ts';
import type { Point } from './segment.ts';
import { slotPlans } from './slotClearance.ts';
import { stringPlaces } from './strings.ts';

/** Whether every string channel stays in the wood, in the block, short of the slot and clear of its neighbours. */
export function channelClearance(design: Design, curves: Curves): readonly Problem[] {
  if (curves.channels.length === 0) return [];
  return [...channelInWood(design, curves), ...channelsClear(design, curves)];
}

function channelInWood({ pins }: Design, curves: Curves): Problem[] {
  const most = woodAtPins(curves) - 1;
  if (pins.channelDepth <= most) return [];
  return [
    tooMuch('pins.channelDepth', pins.channelDepth, most, 'in this thickness', 'Make the channel shallower.'),
  ];
}

function channelsClear(design: Design, curves: Curves): Problem[] {
  const plans = slotPlans(curves);
  const places = stringPlaces(design);
  const given = design.pins.channelLength;
  const fits = (length: number) => {
    const changed = { ...design, pins: { ...design.pins, channelLength: length } };
    const drawn = curves.pins.map((pin, i) =>
      drawChannel(changed, curves.profile, pin, places[i] ?? pin.at[0], curves.slot.angle),
    );
    const made = drawn.filter((c) => c !== undefined);
    return made.length === drawn.length && clear(made, curves, plans);
  };
  if (clear(curves.channels, curves, plans)) return [];
  const why = 'in the block, short of the slot and clear of the next pin';
  const remedy = 'Shorten the channel, move the pins back, or bring pins and strings to the same spread.';
  return [unfitting('pins.channelLength', given, fits, why, remedy)];
}

function clear(channels: readonly Channel[], { pins, profile }: Curves, slot: readonly Polygon[]): boolean {
  const plans = channels.map(plan);
  return plans.every(
    (own, i) =>
      own.every(([x]) => Math.abs(x) <= profile.crownEnd) &&
      slot.every((other) => gapBetween(own, other) >= LEAST_WOOD) &&
      pins.every((pin, j) => j === i || gapToCircle(own, pin.at, pin.reach) >= LEAST_BETWEEN) &&
      plans.every((other, j) => j <= i || gapBetween(own, other) >= LEAST_BETWEEN),
  );
}

/** The channel in plan, as far as it cuts wood. */
function plan({ at, direction: [dx, dy], width, ends }: Channel): Polygon {
  const corner = (s: number, aside: number): Point => [
    at[0] + s * dx - aside * dy,
    at[1] + s * dy + aside * dx,
  ];
  const r = width / 2;
  return [corner(0, -r), corner(ends, -r), corner(ends, r), corner(0, r)];
}
