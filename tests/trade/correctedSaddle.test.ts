import fc from 'fast-check';
import { expect, test } from 'vitest';
import { correctedSaddle } from '../../src/trade/correctedSaddle.ts';
import { actionOf, endHeights } from '../../src/trade/endHeights.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('half a millimetre of action is a millimetre of saddle (derived)', () => {
  const now = { measured: 2.6, wanted: 2.1, height: 8.7, showing: 3.2, tilt: 0 };
  const corrected = correctedSaddle(now);
  expect(corrected.change).toBeCloseTo(-1, 12);
  expect(corrected.height).toBeCloseTo(7.7, 12);
  expect(corrected.showing).toBeCloseTo(2.2, 12);
});

test('a leaning saddle changes by 1/cos of its lean: twice as much at 60° (derived)', () => {
  const corrected = correctedSaddle({ measured: 2.6, wanted: 2.1, height: 8.7, showing: 3.2, tilt: 60 });
  expect(corrected.rise).toBeCloseTo(-1, 12);
  expect(corrected.change).toBeCloseTo(-2, 12);
  expect(corrected.height).toBeCloseTo(6.7, 12);
  expect(corrected.showing).toBeCloseTo(1.2, 12);
});

test('the string over the corrected saddle, its nut as before, has the wanted action', () => {
  fc.assert(
    fc.property(mm(1, 4), mm(1, 4), mm(0.2, 0.9), mm(0, 12), (measured, wanted, at1, tilt) => {
      const before = endHeights({ at12: measured, at1 });
      const { change, rise, showing } = correctedSaddle({ measured, wanted, height: 9, showing: 3, tilt });
      expect(change * Math.cos((tilt * Math.PI) / 180)).toBeCloseTo(rise, 12);
      expect(actionOf({ nut: before.nut, saddle: before.saddle + rise }).at12).toBeCloseTo(wanted, 10);
      expect(showing).toBeCloseTo(3 + change, 12);
    }),
    { seed: 315, numRuns: 200 },
  );
});
