import type { Curves } from '../../../models/curves/curves.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import type { Design } from '../../design/design.ts';
import { type Break, breakAngle } from '../breakAngle.ts';
import { frontSlope } from '../frontSlope.ts';
import { type SaddleLoad, saddleLoad } from '../saddleLoad.ts';
import { sideAngle } from '../sideAngle.ts';
import { woodBehind } from '../woodBehind.ts';
import type { Crown } from './crowns.ts';
import type { Fit } from './placeDesign.ts';

/** How one string goes from its crown to its pin. */
export interface StringBreak {
  /** Undefined when the pin's hole does not lie behind the slot. */
  readonly over: Break | undefined;
  /** The wood it passes, (s, z) in mm, s from the crown along its run. */
  readonly wood: readonly Point[];
  /** Turn in plan over the saddle, degrees; positive toward +X. */
  readonly side: number;
  /** What the saddle bears of it, N. */
  readonly load: SaddleLoad | undefined;
}

/** Each string from its crown over the slot's back edge, or along its channel, to where it enters its hole (B2–B4). */
export function breaks(
  design: Design,
  curves: Curves,
  fit: Fit,
  crowns: readonly Crown[],
): readonly StringBreak[] {
  const { pins, saddle, action, guitar } = design;
  const ramped = pins.channel === 'ramp';
  // by straightedge the frets' plane is known at the saddle alone: it is taken to lie level
  const neckAngle = action.planeBy === 'neck' ? action.neckAngle : 0;
  return crowns.map((crown, i) => {
    const pin = curves.pins[i];
    const ends = fit.heights[i];
    if (!pin || !ends) throw new Error('a string without its pin');
    const hole = ramped ? Math.max(pins.drill, pins.taper > 0 ? pins.mouth : 0) / 2 : pin.reach;
    const wood = woodUnder({
      crown: crown.at,
      pin: pin.at,
      holeRadius: hole,
      slotAngle: (curves.slot.angle * 180) / Math.PI,
      slotWidth: saddle.slotWidth,
      tilt: saddle.tilt,
      top: (x) => topHeight(curves.profile, x),
      ramp: ramped ? { length: pins.channelLength, depth: pins.channelDepth } : undefined,
    });
    const front = frontSlope(neckAngle, ends.nut, ends.saddle, guitar.scale + crown.setback);
    const over = wood.length > 0 ? breakAngle(crown.height, wood, front) : undefined;
    const tensionN = fit.strings[i]?.tensionN ?? 0;
    // strings fan out from the nut: theirs is taken to be straight over the fretboard, toward their place at the nut
    const nut: Point = [crown.at[0] * NUT_SHARE, guitar.scale];
    return {
      over,
      wood,
      side: sideAngle(nut, crown.at, pin.at),
      load: over && saddleLoad(tensionN, front, over.behind),
    };
  });
}

/** A nut's string spread to the saddle's: about 36 to 55 mm. Common practice; it moves the side angle by a degree. */
const NUT_SHARE = 0.65;

function woodUnder(behind: Parameters<typeof woodBehind>[0]): readonly Point[] {
  try {
    return woodBehind(behind);
  } catch (error) {
    if (error instanceof RangeError) return [];
    throw error;
  }
}
