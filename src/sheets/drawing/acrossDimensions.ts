import type { Pin } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Draft } from '../dimensions/draft.ts';
import type { Laned } from '../dimensions/lanes.ts';
import { leader } from '../dimensions/leader.ts';
import { angleText, deviationText, lengthText, type Units } from '../lengthText.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import { wallAt, wallFoot } from '../views/slotWalls.ts';

/** Own tolerances, mm (common practice): a slot that the saddle must fit, and holes as a drill leaves them. */
const SLOT_WIDER = 0.05;
const HOLE_WIDER = 0.1;

/** The straight dimensions of the section across: slot's width, bevel, hole. */
export function acrossDimensions(
  { curves, design }: AcceptedDesign,
  pin: Pin,
  units: Units,
): readonly Laned[] {
  const { slot, profile, underside, pins } = curves;
  const [x, y] = pin.at;
  const top = topHeight(profile, x);
  const say = (mm: number) => lengthText(mm, units);
  const limits = (mm: number) => `${deviationText(mm, units)}/0`;
  const wall = (v: number) => wallAt(slot, profile.thickness, v, x, top).at;
  const outline = pin.outline.drilled;
  const mouth = holeRadius(outline, pin.top);
  const drill = design.pins.drill / 2;
  const bottom = undersideHeight(underside, x, y);
  return [
    {
      side: 'above',
      label: `${say(slot.width)} ${limits(SLOT_WIDER)}`,
      from: wall(-slot.width / 2),
      to: wall(slot.width / 2),
    },
    ...(mouth > drill + 1e-6
      ? [
          {
            side: 'above',
            label: `⌀${say(2 * mouth)} × ${angleText(design.pins.bevelAngle)}`,
            from: [y - mouth, pin.top],
            to: [y + mouth, pin.top],
          } as const,
        ]
      : []),
    {
      side: 'below',
      label: `${pins.length}× ⌀${say(2 * drill)} ${limits(HOLE_WIDER)}`,
      from: [y - drill, bottom],
      to: [y + drill, bottom],
    },
  ];
}

/** What leans in the section across, and the string channel. */
export function acrossLeaders(
  { curves, design }: AcceptedDesign,
  pin: Pin,
  view: View,
  typeface: Typeface,
): readonly Draft[] {
  const { slot, profile } = curves;
  const [x] = pin.at;
  const foot = wallFoot(slot, profile.thickness, slot.width / 2, x);
  const head = wallAt(slot, profile.thickness, slot.width / 2, x, topHeight(profile, x)).at;
  const middle: Point = [(foot[0] + head[0]) / 2, (foot[1] + head[1]) / 2];
  const channel = curves.channels[curves.pins.indexOf(pin)];
  const ways = (degrees: readonly number[]): readonly Point[] =>
    degrees.map((d) => [Math.cos((d * Math.PI) / 180), Math.sin((d * Math.PI) / 180)]);
  return [
    ...(slot.tilt === 0
      ? []
      : [
          leader(
            `slot leans back ${angleText(design.saddle.tilt)}`,
            ways([80, 70, 60, 50, 100, 110, 120]).map((way) => ({ tip: onPaper(view, middle), way })),
            typeface,
          ),
        ]),
    ...(channel
      ? [
          leader(
            'channel',
            ways([100, 110, 80, 120]).map((way) => ({
              tip: onPaper(view, channelMiddle(channel, design.pins.channelLength)),
              way,
            })),
            typeface,
          ),
        ]
      : []),
  ];
}

/** A place on a channel's floor, in the section: y, z. */
function channelMiddle(
  { at, direction, outline }: AcceptedDesign['curves']['channels'][number],
  length: number,
): Point {
  const [from, to] = [outline[0] as Point, outline[1] as Point];
  const s = 0.75 * length;
  return [at[1] + s * direction[1], from[1] + ((to[1] - from[1]) * s) / (to[0] - from[0])];
}
