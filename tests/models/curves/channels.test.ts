import { describe, expect, test } from 'vitest';
import { stringPlaces } from '../../../models/curves/strings.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { type Changes, curves, design } from '../../support/change.ts';

const ramp: Changes = {
  'pins.channel': 'ramp',
  'pins.channelLength': 7,
  'pins.channelWidth': 1.6,
  'pins.channelDepth': 2,
};

test('there are none unless asked for, and then one a pin', () => {
  expect(curves({}).channels).toEqual([]);
  expect(curves(ramp).channels).toHaveLength(6);
});

describe.each<[string, Changes]>([
  ['right-handed', {}],
  ['left-handed', { 'guitar.hand': 'left' }],
  ['pins that lean with the slot', { 'pins.line': 'parallel' }],
  [
    'a steep crown',
    {
      'top.crown': 'set',
      'top.crownRadius': 250,
      'top.blend': 20,
      'top.thickness': 11,
      'pins.channelDepth': 2.5,
    },
  ],
])('%s: each channel', (_name, changes) => {
  const all = { ...ramp, ...changes };
  const d = design(all);
  const { channels, pins, slot, profile } = curves(all);

  test('begins at its pin and points to its string’s place on the saddle', () => {
    stringPlaces(d).forEach((x, i) => {
      const [channel, pin] = [channels[i], pins[i]];
      if (!channel || !pin) throw new Error('a channel is missing');
      expect(channel.at).toEqual(pin.at);
      expect(Math.hypot(...channel.direction)).toBeCloseTo(1, 12);
      const toSaddle = [x - pin.at[0], x * Math.tan(slot.angle) - pin.at[1]] as const;
      const [dx, dy] = channel.direction;
      expect(dx * toSaddle[1] - dy * toSaddle[0]).toBeCloseTo(0, 9);
      expect(dx * toSaddle[0] + dy * toSaddle[1]).toBeGreaterThan(0);
    });
  });

  test('has a floor that starts at its depth under the crown and comes out at its length', () => {
    channels.forEach((channel, i) => {
      const [start, end] = channel.outline;
      const top = pins[i]?.top ?? 0;
      if (!start || !end) throw new Error('the floor is missing');
      expect(start).toEqual([0, expect.closeTo(top - d.pins.channelDepth, 10)]);
      const at = start[1] + ((end[1] - start[1]) * 7) / end[0];
      expect(at).toBeCloseTo(topHeight(profile, channel.at[0] + 7 * channel.direction[0]), 9);
    });
  });

  test('is in the air over the whole of its width where its cut ends', () => {
    for (const channel of channels) {
      const end = channel.outline[1];
      if (!end) throw new Error('the floor is missing');
      for (const aside of [-0.8, 0, 0.8]) {
        const x = channel.at[0] + end[0] * channel.direction[0] - aside * channel.direction[1];
        expect(topHeight(profile, x)).toBeLessThan(end[1]);
      }
      expect(channel.reach).toBe(end[0]);
    }
  });

  test('cuts no wood beyond where it is said to end', () => {
    for (const channel of channels) {
      const [start, end] = channel.outline;
      if (!start || !end) throw new Error('the floor is missing');
      expect(channel.ends).toBeGreaterThanOrEqual(7);
      expect(channel.ends).toBeLessThanOrEqual(channel.reach);
      const floor = start[1] + ((end[1] - start[1]) * channel.ends) / end[0];
      for (const aside of [-0.8, 0.8]) {
        const x = channel.at[0] + channel.ends * channel.direction[0] - aside * channel.direction[1];
        expect(topHeight(profile, x)).toBeLessThanOrEqual(floor + 1e-9);
      }
    }
  });
});
