import { expect, test } from 'vitest';
import { slotToPart } from '../../models/curves/slot.ts';
import { surfaceOf } from '../../models/surface/surface.ts';
import { woodUnderSlot } from '../../src/report/woodUnderSlot.ts';
import { acceptedDesigns } from '../support/designs.ts';

test('is the least wood that stands in the drawn bridge along the slot’s middle and walls, for random designs', () => {
  for (const { curves } of acceptedDesigns(25, 422).accepted) {
    const { slot, profile } = curves;
    const wood = surfaceOf(curves, 'drilled');
    let least = Number.POSITIVE_INFINITY;
    // kept off walls and ends, where a column is either wood or slot
    const [half, r] = [slot.halfLength - 1e-6, slot.width / 2 - 1e-6];
    for (let i = 0; i <= 400; i++) {
      const u = half * (i / 200 - 1);
      const beyond = slot.roundEnds ? Math.max(0, Math.abs(u) - (half - r)) : 0;
      const wide = Math.sqrt(r * r - beyond * beyond) - 1e-6;
      for (const v of [-wide, 0, wide]) {
        const floor =
          slot.floorRadius === undefined
            ? -slot.depth
            : -slot.depth - (slot.floorRadius - Math.sqrt(slot.floorRadius ** 2 - u * u));
        const [x, y, z] = slotToPart(slot, profile.thickness, u, v, floor);
        const stretch = wood.columns(x, y)[0];
        // over the wings an open slot's floor is in the air
        if (stretch && Math.abs(stretch[1] - z) < 1e-3) least = Math.min(least, stretch[1] - stretch[0]);
      }
    }
    // looked at every half millimetre, where a floor that falls with the crown does so by less than a tenth a millimetre
    expect(Math.abs(woodUnderSlot(curves) - least), `${woodUnderSlot(curves)} for ${least}`).toBeLessThan(
      0.05,
    );
  }
});
