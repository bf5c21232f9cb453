import { expect, test } from 'vitest';
import { floorOver } from '../../../models/curves/slot.ts';
import { heightOn } from '../../../models/curves/topHeight.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { saddleFit } from '../../../src/trade/fit/saddleFit.ts';
import { saddleWeight } from '../../../src/trade/fit/saddleWeight.ts';
import { BONE_KG_M3 } from '../../../src/trade/saddleMass.ts';
import { type Changes, change } from '../../support/change.ts';

function made(changes: Changes) {
  const { design, curves, fit } = acceptDesign(
    change(initialDesign(), { 'saddle.showing': 4.2, ...changes }),
  );
  return { curves, saddle: saddleFit(design, curves, fit) };
}

test('the initial design’s, of bone (its density from memory): 74 × 3.2 × about 9.3: 4.1 to 4.2 g', () => {
  const { curves, saddle } = made({});
  const mass = saddleWeight(curves.slot, saddle, BONE_KG_M3) ?? 0;
  expect(mass).toBeGreaterThan(4);
  expect(mass).toBeLessThan(4.3);
});

test.each<[string, Changes]>([
  ['flat floor', {}],
  ['floor parallel to the crown', { 'saddle.floor': 'parallel' }],
  ['leaning', { 'saddle.tilt': 8 }],
  ['leaning, floor parallel', { 'saddle.tilt': 8, 'saddle.floor': 'parallel' }],
  ['open', { 'saddle.ends': 'open' }],
])('by strips from floor to top: %s', (_, changes) => {
  const { curves, saddle } = made(changes);
  const { slot, profile } = curves;
  if (!saddle.top) throw new Error('no saddle');
  const middle = floorOver(slot, profile.thickness, 0);
  const [steps, half] = [4000, saddle.length / 2];
  let volume = 0;
  for (let i = 0; i < steps; i++) {
    const u = -half + ((i + 0.5) * saddle.length) / steps;
    const floor = floorOver(slot, profile.thickness, u * Math.cos(slot.angle)) - middle;
    // how wide the slot is there: its ends round off within half its width
    const beyond = slot.roundEnds ? Math.max(0, Math.abs(u) - (half - slot.width / 2)) : 0;
    const width = 2 * Math.sqrt((slot.width / 2) ** 2 - beyond ** 2);
    volume += (((heightOn(saddle.top, u) - floor) / Math.cos(slot.tilt)) * width * saddle.length) / steps;
  }
  const mass = saddleWeight(slot, saddle, 1000) ?? 0;
  expect(Math.abs(mass / (volume * 1e-3) - 1)).toBeLessThan(5e-5);
});

test('no saddle, no mass', () => {
  const { curves, saddle } = made({});
  expect(saddleWeight(curves.slot, { ...saddle, top: undefined }, 1900)).toBeUndefined();
});
