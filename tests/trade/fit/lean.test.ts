import { expect, test } from 'vitest';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { crowns } from '../../../src/trade/fit/crowns.ts';
import { saddleFit } from '../../../src/trade/fit/saddleFit.ts';
import { isHeld } from '../../../src/trade/saddleStand.ts';
import { change } from '../../support/change.ts';

const tilted = (tilt: number) => {
  const accepted = acceptDesign(change(initialDesign(), { 'saddle.tilt': tilt, 'saddle.filed': 'straight' }));
  return { ...accepted, crowns: crowns(accepted.design, accepted.fit) };
};

// plane geometry: a saddle that shows h over the top and leans by τ has its crown h·tan τ behind the slot's line
test('a leaning saddle’s slot lies further forward, so that its crown stands where intonation asks', () => {
  const [upright, leaning] = [tilted(0), tilted(10)];
  const forward = upright.fit.solved['saddle.setback'].used - leaning.fit.solved['saddle.setback'].used;
  const mean =
    leaning.fit.height.undersides.reduce((sum, z) => sum + z - leaning.fit.height.thickness, 0) / 6;
  expect(forward).toBeCloseTo(mean * Math.tan((10 * Math.PI) / 180), 2);
  expect(forward).toBeGreaterThan(0.5);
});

test('what each crown has of set-back is what its place in the plan has', () => {
  const { fit, crowns: made } = tilted(10);
  made.forEach(({ at: [, y], setback }, i) => {
    // the origin lies the slot's own set-back behind the scale line; +y is toward the nut
    expect(fit.solved['saddle.setback'].used - y, `string ${i + 1}`).toBeCloseTo(setback, 6);
  });
});

test.each([
  ['flat', 0],
  ['flat', 12],
  ['parallel', 0],
  ['parallel', 6],
  ['parallel', 12],
])('a solved depth keeps the half rule: %s floor, leaning %i°', (floor, tilt) => {
  const text = change(initialDesign(), { 'saddle.floor': floor, 'saddle.tilt': tilt });
  const { design, curves, fit } = acceptDesign(text);
  expect(fit.depth.both, 'the wood allows it').toBe(true);
  saddleFit(design, curves, fit).stands.forEach((stand, i) => {
    expect(isHeld(stand, 0.5), `string ${i + 1}: ${stand.inSlot} mm of ${stand.height}`).toBe(true);
  });
});
