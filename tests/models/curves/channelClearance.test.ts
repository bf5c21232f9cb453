import { expect, test } from 'vitest';
import { channelClearance } from '../../../models/curves/channelClearance.ts';
import { type Changes, curves, design, designText, problemsOf } from '../../support/change.ts';

const ramp: Changes = { 'pins.channel': 'ramp' };

test('nothing is wrong with no channels, nor with those of all defaults', () => {
  expect(channelClearance(design({}), curves({}))).toEqual([]);
  expect(channelClearance(design(ramp), curves(ramp))).toEqual([]);
});

test('a channel stops short of the slot', () => {
  const straight = {
    ...ramp,
    'saddle.angle': 0,
    'saddle.slotWidth': 3,
    'pins.behindSlot': 13,
    'strings.spread': 57,
    'pins.spread': 57,
  };
  // 13 less 1.5 of slot and 0.5 of wood: 11; on the crown's slope the cut runs on a little further (derived)
  const [problem] = problemsOf(designText({ ...straight, 'pins.channelLength': 12 }));
  expect(problem).toMatchObject({ path: 'pins.channelLength' });
  const most = Number(/^at most ([\d.]+)/.exec(problem?.allowed ?? '')?.[1]);
  expect(most).toBeGreaterThan(10);
  expect(most).toBeLessThanOrEqual(11);
});

test('strings set much wider than the pins would send a channel through the next pin: refused', () => {
  const wide = {
    ...ramp,
    'footprint.length': 180,
    'top.block': 110,
    'strings.count': 12,
    'strings.spread': 120,
    'pins.spread': 79,
    'pins.drill': 5.5,
    'pins.taper': 0,
    'pins.bevel': 'none',
    'pins.behindSlot': 9,
    'pins.channelDepth': 4,
  };
  expect(problemsOf(designText({ ...wide, 'pins.channelLength': 9 }))).toMatchObject([
    { path: 'pins.channelLength' },
  ]);
  expect(problemsOf(designText({ ...wide, 'pins.channel': 'none' }))).toEqual([]);
});

test('a channel stays in the block, where the crown that it is measured from is', () => {
  const out = {
    ...ramp,
    'strings.count': 4,
    'strings.spread': 120,
    'pins.spread': 76,
    'pins.behindSlot': 18,
    'footprint.depthCentre': 46,
    'pins.channelLength': 12,
    'pins.channelDepth': 5,
  };
  expect(problemsOf(designText(out))).toMatchObject([{ path: 'pins.channelLength' }]);
});

test('a channel leaves a millimetre of wood under it', () => {
  const thin = {
    ...ramp,
    'top.thickness': 6,
    'saddle.depth': 3,
    'top.tip': 2,
    'top.blend': 15,
    'guitar.soundboard': 'flat',
  };
  // 6 less the crown's drop at the outer pins, 1.0 at 28.5 under 16 in, less 1 (derived)
  expect(problemsOf(designText({ ...thin, 'pins.channelDepth': 4.05 }))).toMatchObject([
    { path: 'pins.channelDepth', allowed: 'at most 3.99 mm in this thickness' },
  ]);
});
