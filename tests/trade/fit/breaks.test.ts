import { describe, expect, test } from 'vitest';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { fitReport } from '../../../src/trade/fit/fitReport.ts';
import { type Changes, change } from '../../support/change.ts';

const report = (changes: Changes) => {
  const accepted = acceptDesign(change(initialDesign(), changes));
  return { ...accepted, ...fitReport(accepted.design, accepted.curves, accepted.fit) };
};

describe('strings from crown to hole (B2 to B4: derived), by plane geometry of the drawn part', () => {
  test.each<[string, Changes]>([
    ['upright', {}],
    ['left-handed', { 'guitar.hand': 'left' }],
    // so high and so far back that the crown stands over the wood behind the slot already
    [
      'leaning out',
      { 'saddle.tilt': 12, 'saddle.slotWidth': 1.6, 'saddle.showing': 7, 'action.planeHeight': 13 },
    ],
  ])('%s', (_, changes) => {
    const { breaks, crowns, curves, fit } = report(changes);
    for (const [i, { over, load }] of breaks.entries()) {
      const [crown, pin] = [crowns[i], curves.pins[i]];
      if (!crown || !pin || !over || !load) throw new Error(`string ${i + 1} has no break`);
      const far = Math.hypot(pin.at[0] - crown.at[0], pin.at[1] - crown.at[1]);
      const run = far - pin.reach;
      const x = crown.at[0] + ((pin.at[0] - crown.at[0]) * run) / far;
      const rise = crown.height - topHeight(curves.profile, x);
      expect(over.straight, `string ${i + 1}`).toBe(true);
      expect(over.behind, `string ${i + 1}`).toBeCloseTo((Math.atan2(rise, run) * 180) / Math.PI, 6);
      // both ends of the string pull alike: the resultant halves the angle
      const tension = fit.strings[i]?.tensionN ?? 0;
      expect(load.resultant).toBeCloseTo(2 * tension * Math.sin((over.angle * Math.PI) / 360), 6);
      expect(Math.hypot(load.down, load.forward)).toBeCloseTo(load.resultant, 6);
    }
  });

  test('the leaning saddle’s crowns do stand behind the slot’s back edge', () => {
    const { crowns, curves } = report({
      'saddle.tilt': 12,
      'saddle.slotWidth': 1.6,
      'saddle.showing': 7,
      'action.planeHeight': 13,
    });
    for (const { at } of crowns) {
      const across = at[1] * Math.cos(curves.slot.angle) - at[0] * Math.sin(curves.slot.angle);
      expect(across).toBeLessThan(-0.8 / Math.cos(curves.slot.tilt));
    }
  });
});
