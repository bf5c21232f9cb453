import { expect, test } from 'vitest';
import { tellingCuts } from '../../src/app/part/tellingCuts.ts';
import { curves } from '../support/change.ts';

test('a cut across goes through a pin, one lengthwise through the whole row', () => {
  const even = curves({ 'strings.count': 6, 'pins.spread': 57, 'pins.behindSlot': 13 });
  // six pins 11.4 mm apart, two of them as near to the middle
  expect(Math.abs(tellingCuts(even).x ?? 0)).toBeCloseTo(5.7, 9);
  expect(tellingCuts(even).y).toBeCloseTo(-13, 9);
  expect(tellingCuts(curves({ 'strings.count': 5, 'pins.spread': 50 })).x).toBeCloseTo(0, 9);
  const leaning = curves({ 'pins.line': 'parallel', 'saddle.angle': 3, 'pins.behindSlot': 14 });
  expect(tellingCuts(leaning).y, 'a leaning row is cut at its middle').toBeCloseTo(-14, 9);
});
