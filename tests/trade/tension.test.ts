import { expect, test } from 'vitest';
import { pitchFrequency } from '../../src/trade/notes.ts';
import { tension } from '../../src/trade/tension.ts';
import { lightTensions } from '../support/lightSet.ts';

test.each([
  // Anderson & Beausoleil, J. Acoust. Soc. Am. 156(1), 683 (2024), string tables: 0.650 m
  [0.374, 'E4', 68.6],
  [0.505, 'B3', 52.0],
  [0.836, 'G3', 54.2],
  [1.92, 'D3', 70.0],
  [3.289, 'A2', 67.3],
  [5.47, 'E2', 62.8],
])('S2: %s g/m at %s pulls %s N', (gM, note, newtons) => {
  const found = tension(gM / 1000, 0.65, pitchFrequency(note) ?? Number.NaN);
  expect(Math.abs(found - newtons), `${found} N`).toBeLessThan(0.15);
});

test('S6: the light set at 645.16 mm (derived; its cores are assumed)', () => {
  const newtons = [103.62, 103.38, 132.7, 132.07, 126.91, 112.97];
  for (const [i, found] of lightTensions.entries())
    expect(Math.abs(found - (newtons[i] ?? 0)), `string ${i + 1}: ${found} N`).toBeLessThan(0.05);
  expect(Math.abs(lightTensions.reduce((a, b) => a + b, 0) - 711.6)).toBeLessThan(0.05);
});
