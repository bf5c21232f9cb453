import { expect, test } from 'vitest';
import { enclosedArea } from '../../models/curves/chain.ts';
import { BONE_KG_M3, saddleMass } from '../../src/trade/saddleMass.ts';
import { curves } from '../support/change.ts';

test('by hand: bone (its density from memory), 74 × 3.2 with round ends, 9.6 high: 4.279 g', () => {
  const plan = 70.8 * 3.2 + Math.PI * 1.6 ** 2;
  const size = { length: 74, width: 3.2, height: 9.6, roundEnds: true };
  expect(saddleMass(size, BONE_KG_M3)).toBeCloseTo(plan * 9.6 * 1.9e-3, 9);
  expect(saddleMass({ ...size, roundEnds: false }, 1900)).toBeCloseTo(74 * 3.2 * 9.6 * 1.9e-3, 9);
});

test.each(['round', 'open'])('its plan is the drawn slot’s: %s ends', (ends) => {
  const { slot } = curves({ 'saddle.ends': ends });
  const size = { length: 2 * slot.halfLength, width: slot.width, height: 1, roundEnds: slot.roundEnds };
  expect(saddleMass(size, 1e6)).toBeCloseTo(enclosedArea(slot.plan), 9);
});
