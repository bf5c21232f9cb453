import type { Pin } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { TOLERANCES } from '../../trade/tolerances.ts';
import type { Draft } from '../dimensions/draft.ts';
import type { Laned } from '../dimensions/lanes.ts';
import { leader } from '../dimensions/leader.ts';
import { angleText, lengthText, limitsText } from '../lengthText.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import type { PapersOptions } from '../sheetOptions.ts';
import { isTapered } from '../views/isTapered.ts';
import { wallAt, wallFoot } from '../views/slotWalls.ts';

/**
 * The straight dimensions of the section across: slot's width, bevel, hole; of a reamed one the taper's diameter at the
 * top, bevelled or not, and the drill's where the taper leaves something of it.
 */
export function acrossDimensions(
  { curves, design }: AcceptedDesign,
  pin: Pin,
  { units, holes }: Pick<PapersOptions, 'units' | 'holes'>,
): readonly Laned[] {
  const { slot, profile, underside, pins } = curves;
  const [x, y] = pin.at;
  const top = topHeight(profile, x);
  const say = (mm: number) => lengthText(mm, units);
  const limits = (of: keyof typeof TOLERANCES) => limitsText(TOLERANCES[of], units);
  const wall = (v: number) => wallAt(slot, profile.thickness, v, x, top).at;
  const outline = pin.outline[holes];
  const drill = design.pins.drill / 2;
  const tapers = isTapered(pin, holes);
  const bevelled = design.pins.bevel === 'cut';
  const taper = design.pins.mouth / 2;
  const bevel = design.pins.bevelDiameter / 2;
  const bottom = undersideHeight(underside, x, y);
  return [
    {
      side: 'above',
      label: `${say(slot.width)} ${limits('slot-width')}`,
      from: wall(-slot.width / 2),
      to: wall(slot.width / 2),
    },
    ...(tapers
      ? [
          {
            side: 'above',
            label: `${pins.length}× ⌀${say(2 * taper)} ${limits('mouth')} taper ${angleText(design.pins.taper)}`,
            from: [y - taper, pin.top],
            to: [y + taper, pin.top],
          } as const,
        ]
      : []),
    ...(bevelled
      ? [
          {
            side: 'above',
            label: `⌀${say(2 * bevel)} × ${angleText(design.pins.bevelAngle)}`,
            from: [y - bevel, pin.top],
            to: [y + bevel, pin.top],
          } as const,
        ]
      : []),
    ...(holeRadius(outline, bottom) > drill + 1e-6
      ? []
      : [
          {
            side: 'below',
            label: `${pins.length}× ⌀${say(2 * drill)} ${limits('pin-hole')}`,
            from: [y - drill, bottom],
            to: [y + drill, bottom],
          } as const,
        ]),
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
