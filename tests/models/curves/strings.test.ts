import { describe, expect, test } from 'vitest';
import { stringPlaces } from '../../../models/curves/strings.ts';
import { design } from '../../support/change.ts';

const THICK = ['0.012 in', '0.016 in', '0.024 in', '0.032 in', '0.042 in', '0.053 in'];

describe.each([
  ['right', 1],
  ['left', -1],
] as const)('%s-handed, treble first', (hand, sign) => {
  const right = { 'guitar.hand': hand, 'strings.spread': 55 };

  test('equal centres divide the spread', () => {
    const places = stringPlaces(design(right));
    expect(places.map((x) => x * sign)).toEqual([27.5, 16.5, 5.5, -5.5, -16.5, -27.5]);
  });

  test('equal gaps leave the same air between neighbours, and the spread as it is', () => {
    const d = design({ ...right, 'strings.spacing': 'gaps', 'strings.diameters': THICK });
    const places = stringPlaces(d).map((x) => x * sign);
    expect(places[0]).toBe(27.5);
    expect(places[5]).toBeCloseTo(-27.5, 12);
    const gaps = places.slice(1).map((x, i) => {
      const halves = ((d.strings.diameters[i] ?? 0) + (d.strings.diameters[i + 1] ?? 0)) / 2;
      return (places[i] ?? 0) - x - halves;
    });
    for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 12);
    // thick strings stand further apart
    expect((places[4] ?? 0) - (places[5] ?? 0)).toBeGreaterThan((places[0] ?? 0) - (places[1] ?? 0));
  });
});

test('any count from 4 to 12', () => {
  for (let count = 4; count <= 12; count++) {
    const places = stringPlaces(design({ 'strings.count': count }));
    expect(places).toHaveLength(count);
    expect(places.reduce((a, b) => a + b, 0)).toBeCloseTo(0, 9);
  }
});
