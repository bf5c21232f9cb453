import type { Channel, Curves } from './curves.ts';
import { lastWith } from './lastWith.ts';
import { pinRadii } from './pinRadii.ts';
import { type Chain, line, type Point } from './segment.ts';
import { topHeight } from './topHeight.ts';

/** A channel's two sides and its end, from the hole's edge to where its floor comes out of the crown. */
export function channelSides(channel: Channel, { pins, profile }: Curves): Chain {
  const { at, direction, width } = channel;
  const pin = pins.find((p) => p.at[0] === at[0] && p.at[1] === at[1]);
  const hole = pin ? pinRadii(pin).surface : 0;
  const half = width / 2;
  const place = (s: number, aside: number): Point => [
    at[0] + s * direction[0] - aside * direction[1],
    at[1] + s * direction[1] + aside * direction[0],
  ];
  const start = Math.sqrt(Math.max(0, hole ** 2 - half ** 2));
  const end = comesOut(channel, (s) => topHeight(profile, place(s, 0)[0]));
  const corners = [place(start, half), place(end, half), place(end, -half), place(start, -half)] as const;
  return [line(corners[0], corners[1]), line(corners[1], corners[2]), line(corners[2], corners[3])];
}

/** Where a ramp's floor meets the surface over it, mm from the pin. */
function comesOut({ outline, reach }: Channel, top: (s: number) => number): number {
  const [from, to] = [outline[0] as Point, outline[1] as Point];
  const floor = (s: number): number => from[1] + ((to[1] - from[1]) * s) / (to[0] - from[0]);
  return lastWith((s) => floor(s) < top(s), reach);
}
