import type { Design } from '../../src/design/design.ts';
import { DesignError, misfit, type Problem, roundForReading } from '../../src/design/problem.ts';
import type { Channel, Pin, Profile } from './curves.ts';
import { drop } from './profile.ts';
import type { Point } from './segment.ts';

/** Flattest ramp that still comes out of the wood at a definite place: 1 in 25 over the crown's own slope. */
const LEAST_SLOPE = 0.04;

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
  if (p.channelWidth > p.drill - 0.2) {
    throw new DesignError([
      misfit(
        'pins.channelWidth',
        p.channelWidth,
        `at most ${roundForReading(p.drill - 0.2)} mm, narrower than the drill`,
        'Take a narrower channel or a wider drill.',
      ),
    ]);
  }
  const made = pins.map((pin, i) => channel(design, profile, pin, places[i] ?? pin.at[0], slotAngle));
  const problem = made.find((m): m is Problem => 'code' in m);
  if (problem) throw new DesignError([problem]);
  return made as readonly Channel[];
}

function channel(
  design: Design,
  profile: Profile,
  pin: Pin,
  place: number,
  slotAngle: number,
): Channel | Problem {
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
  if (net < LEAST_SLOPE) {
    return misfit(
      'pins.channelDepth',
      depth,
      `at least ${roundForReading(depth + (LEAST_SLOPE - net) * length)} mm over this length`,
      'Deepen or shorten the channel.',
    );
  }
  // carried on until its floor clears the higher side of the crown, so that the cut leaves the wood cleanly
  const beyond = (0.2 + (crownSlope * width) / 2) / net;
  const reach = length + beyond;
  const lid = Math.max(pin.top, topAtEnd + rise * beyond) + 1 + (crownSlope * width) / 2;
  return {
    at: pin.at,
    direction,
    width,
    reach,
    outline: [
      [0, start],
      [reach, topAtEnd + rise * beyond],
      [reach, lid],
      [0, lid],
    ],
  };
}
