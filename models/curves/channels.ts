import type { Design } from '../../src/design/design.ts';
import { DesignError, tooMuch, unfitting } from '../../src/design/problem.ts';
import type { Channel, Pin, Profile } from './curves.ts';
import { drop } from './profile.ts';
import type { Point } from './segment.ts';

/** Flattest ramp that still comes out of the wood at a definite place: 1 in 25 over the crown's own slope. */
const LEAST_SLOPE = 0.04;
/** How much narrower than the drill a channel is, mm: its start stands inside the hole. */
const NARROWER = 0.2;

/**
 * The string channels, one a pin, each aimed at its string's place on the saddle.
 *
 * @param places x of each string at the saddle, mm
 * @param slotAngle radians
 */
export function channels(
  design: Design,
  profile: Profile,
  pins: readonly Pin[],
  places: readonly number[],
  slotAngle: number,
): readonly Channel[] {
  const p = design.pins;
  if (p.channel === 'none') return [];
  if (p.channelWidth > p.drill - NARROWER) {
    const remedy = 'Take a narrower channel or a wider drill.';
    throw new DesignError([
      tooMuch('pins.channelWidth', p.channelWidth, p.drill - NARROWER, 'in a hole of this drill', remedy),
    ]);
  }
  const draw = (depth: number) => {
    const changed = { ...design, pins: { ...p, channelDepth: depth } };
    return pins.map((pin, i) => drawChannel(changed, profile, pin, places[i] ?? pin.at[0], slotAngle));
  };
  const made = draw(p.channelDepth).filter((c) => c !== undefined);
  if (made.length === pins.length) return made;
  const fits = (depth: number) => draw(depth).every((c) => c !== undefined);
  const remedy = 'Deepen or shorten the channel.';
  throw new DesignError([unfitting('pins.channelDepth', p.channelDepth, fits, 'over this length', remedy)]);
}

/** One string channel; undefined when its ramp is too flat to come out of the wood. */
export function drawChannel(
  design: Design,
  profile: Profile,
  pin: Pin,
  place: number,
  slotAngle: number,
): Channel | undefined {
  const { channelLength: length, channelWidth: width, channelDepth: depth } = design.pins;
  const toSaddle: Point = [place - pin.at[0], place * Math.tan(slotAngle) - pin.at[1]];
  const far = Math.hypot(toSaddle[0], toSaddle[1]);
  const direction: Point = [toSaddle[0] / far, toSaddle[1] / far];
  const xEnd = pin.at[0] + direction[0] * length;
  const topAtEnd = profile.thickness - drop(profile.crownRadius, xEnd);
  const start = pin.top - depth;
  const rise = (topAtEnd - start) / length;
  const x = Math.max(Math.abs(pin.at[0]), Math.abs(xEnd));
  const crownSlope = x / Math.sqrt(profile.crownRadius ** 2 - x * x);
  const net = rise - crownSlope * Math.abs(direction[0]);
  if (net < LEAST_SLOPE) return undefined;
  // carried on until its floor clears the higher side of the crown, so that the cut leaves the wood cleanly
  const beyond = (0.2 + (crownSlope * width) / 2) / net;
  const reach = length + beyond;
  const lid = Math.max(pin.top, topAtEnd + rise * beyond) + 1 + (crownSlope * width) / 2;
  return {
    at: pin.at,
    direction,
    width,
    reach,
    ends: length + (crownSlope * width) / 2 / net,
    outline: [
      [0, start],
      [reach, topAtEnd + rise * beyond],
      [reach, lid],
      [0, lid],
    ],
  };
}
