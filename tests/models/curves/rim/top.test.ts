import { expect, test } from 'vitest';
import { topOf } from '../../../../models/curves/rim/top.ts';
import { heightOn, insetProfile } from '../../../../models/curves/topHeight.ts';
import { acceptedDesigns } from '../../../support/designs.ts';

// Two programs for one drawing: the chain moved in and then looked up, and heights looked up without a chain.
test('heights under the top are those of the profile moved in', () => {
  for (const { curves, design } of acceptedDesigns(20, 5).accepted) {
    const top = topOf(curves.profile);
    const half = design.footprint.length / 2;
    for (const depth of [0, 0.3, Math.min(1.5, design.top.shoulder * 0.7)]) {
      const inset = insetProfile(curves.profile, depth);
      for (let x = -half; x <= half; x += half / 97) {
        expect(top.height(x, depth), `${depth} mm in, over x = ${x}`).toBeCloseTo(heightOn(inset, x), 9);
      }
    }
  }
});

test('slopes are those of the heights', () => {
  for (const { curves, design } of acceptedDesigns(20, 6).accepted) {
    const top = topOf(curves.profile);
    const half = design.footprint.length / 2;
    const h = 1e-6;
    for (let x = -half + 0.123; x < half; x += half / 97) {
      const rise = (top.height(x + h, 0.2) - top.height(x - h, 0.2)) / (2 * h);
      // measured as an angle: near the block's end the blend stands almost upright
      expect(Math.abs(Math.atan(top.slope(x, 0.2)) - Math.atan(rise)), `over x = ${x}`).toBeLessThan(1e-4);
    }
  }
});
