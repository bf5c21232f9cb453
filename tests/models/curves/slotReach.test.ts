import { expect, test } from 'vitest';
import { slotToPart } from '../../../models/curves/slot.ts';
import { slotReach } from '../../../models/curves/slotReach.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { designText } from '../../support/change.ts';

const curvesOf = (ends: 'round' | 'open') => acceptDesign(designText({ 'saddle.ends': ends })).curves;

test('a slot that stops in the wood reaches to its ends', () => {
  const curves = curvesOf('round');
  expect(slotReach(curves)).toBe(curves.slot.halfLength);
});

test('an open slot reaches to where the crown ends, and is carried on beyond', () => {
  const curves = curvesOf('open');
  const { slot, profile } = curves;
  const reach = slotReach(curves);
  expect(reach).toBeLessThan(slot.halfLength);
  const height = (u: number) => topHeight(profile, slotToPart(slot, profile.thickness, u, 0, 0)[0]);
  const crown = (u: number) => {
    const x = u * Math.cos(slot.angle);
    return profile.thickness - profile.crownRadius + Math.sqrt(profile.crownRadius ** 2 - x * x);
  };
  // the top is the crown's arc as far as it reaches, and falls away from it there
  expect(height(reach)).toBeCloseTo(crown(reach), 9);
  expect(height(reach + 1)).toBeLessThan(crown(reach + 1) - 1e-3);
});
