import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endHeights } from '../../src/trade/endHeights.ts';
import { fretboardDrop } from '../../src/trade/fretboardDrop.ts';
import { stringUnderside } from '../../src/trade/stringUnderside.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a string’s underside over the glue plane at the saddle', () => {
  test('z = p − drop + hs with the check values of I3 and of the sagitta put together (derived)', () => {
    const at = { fretPlane: 9.858, drop: 0.93149 };
    expect(stringUnderside(at, 3.5897)).toBeCloseTo(12.51621, 9);
  });

  test('by coordinates: the string’s line over its own row of fret tops', () => {
    // the plane of the fret tops rises by tan θ toward the bridge; the string is straight from nut to saddle
    const [scale, p, slope, x, radius] = [645.16, 9.858, Math.tan(Math.PI / 360), -27.5, 406.4];
    const fretTop = (fromNut: number) =>
      p - (scale - fromNut) * slope - (radius - Math.sqrt(radius ** 2 - x * x));
    const z = stringUnderside(
      { fretPlane: p, drop: fretboardDrop(radius, x) },
      endHeights({ at12: 2.4, at1: 0.55 }).saddle,
    );
    const nut = fretTop(0) + endHeights({ at12: 2.4, at1: 0.55 }).nut;
    expect((nut + z) / 2 - fretTop(scale / 2)).toBeCloseTo(2.4, 9);
  });

  test('dz/d(a12) = 2 while the nut’s slots stay as they are', () => {
    fc.assert(
      fc.property(mm(7, 14), mm(0, 2), mm(1, 4), mm(0.2, 0.8), mm(-1, 1), (p, drop, at12, nut, more) => {
        const z = (a: number) => stringUnderside({ fretPlane: p, drop }, 2 * a - nut);
        expect(z(at12 + more) - z(at12)).toBeCloseTo(2 * more, 9);
      }),
      { seed: 304, numRuns: 200 },
    );
  });

  test('with the clearance at the 1st fret kept instead, it is 2/(1 − 2r): a little more', () => {
    const r = 1 - 2 ** (-1 / 12);
    const z = (at12: number) =>
      stringUnderside({ fretPlane: 10, drop: 0.3 }, endHeights({ at12, at1: 0.45 }).saddle);
    expect(z(2.6) - z(2.1)).toBeCloseTo((0.5 * (2 - 2 * r)) / (1 - 2 * r), 9);
  });
});
