import { expect, test } from 'vitest';
import { enclosedArea } from '../../models/curves/chain.ts';
import { BONE_KG_M3, saddleMass } from '../../src/trade/saddleMass.ts';
import { curves } from '../support/change.ts';

test('by hand: bone (its density from memory), 74 × 3.2 with round ends, 9.6 high: 4.279 g', () => {
  const plan = 70.8 * 3.2 + Math.PI * 1.6 ** 2;
  const size = { face: 74 * 9.6, width: 3.2, roundEnds: [9.6, 9.6] };
  expect(plan * 9.6 * 1.9e-3).toBeCloseTo(4.279, 3);
  expect(saddleMass(size, BONE_KG_M3)).toBeCloseTo(plan * 9.6 * 1.9e-3, 9);
  expect(saddleMass({ ...size, roundEnds: [] }, 1900)).toBeCloseTo(74 * 3.2 * 9.6 * 1.9e-3, 9);
});

test.each(['round', 'open'])('its plan is the drawn slot’s: %s ends', (ends) => {
  const { slot } = curves({ 'saddle.ends': ends });
  const roundEnds = slot.roundEnds ? [1, 1] : [];
  const size = { face: 2 * slot.halfLength, width: slot.width, roundEnds };
  expect(saddleMass(size, 1e6)).toBeCloseTo(enclosedArea(slot.plan), 9);
});
