import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acrossStrings } from '../../src/trade/acrossStrings.ts';
import { fretboardDrop } from '../../src/trade/fretboardDrop.ts';
import { middleOf } from '../../src/trade/middleOf.ts';
import { showingForThickness, thicknessForShowing } from '../../src/trade/saddleShowing.ts';
import { stringUnderside } from '../../src/trade/stringUnderside.ts';

const PLACES = [27.5, 16.5, 5.5, -5.5, -16.5, -27.5];
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const crowned = (thickness: number, radius: number) => (x: number) => thickness - fretboardDrop(radius, x);
const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/** What shows under each string of a bridge, from the bridge itself. */
function showings(
  p: number,
  hs: readonly number[],
  board: number,
  top: (x: number) => number,
  places = PLACES,
) {
  return places.map((x, i) => {
    const z = stringUnderside({ fretPlane: p, drop: fretboardDrop(board, x) }, hs[i] ?? Number.NaN);
    return z - top(x);
  });
}

describe('what of the saddle shows', () => {
  test('p 9.858, hs 3.5897 to 4.4839, t 9.5, crown as the fretboard: p + hs − t under every string (derived)', () => {
    const hs = acrossStrings(PLACES, 3.5897, 4.4839);
    const shown = showings(9.858, hs, 406.4, crowned(9.5, 406.4));
    shown.forEach((s, i) => {
      expect(s, `string ${i + 1}`).toBeCloseTo(9.858 + (hs[i] ?? 0) - 9.5, 9);
    });
  });

  test('the solved thickness shows what was wanted at the middle, whatever the crown', () => {
    fc.assert(
      fc.property(
        mm(8, 12),
        mm(3, 4),
        mm(3.5, 5.5),
        mm(1, 5),
        mm(200, 2000),
        mm(200, 2000),
        (p, treble, bass, wanted, board, crown) => {
          const hs = acrossStrings(PLACES, treble, bass);
          const middle = middleOf(PLACES, hs);
          const t = thicknessForShowing(p, middle, wanted);
          const atMiddle = stringUnderside({ fretPlane: p, drop: fretboardDrop(board, 0) }, middle);
          expect(atMiddle - crowned(t, crown)(0)).toBeCloseTo(wanted, 9);
          expect(showingForThickness(p, middle, t)).toBeCloseTo(wanted, 9);
          // and with the crown as the fretboard it is the mean over the strings too
          expect(mean(showings(p, hs, board, crowned(t, board)))).toBeCloseTo(wanted, 9);
        },
      ),
      { seed: 306, numRuns: 200 },
    );
  });

  test('a thicker bridge shows as much less', () => {
    expect(showingForThickness(9.858, 4, 9.5) - showingForThickness(9.858, 4, 10)).toBeCloseTo(0.5, 12);
  });

  test('the other hand’s bridge is the mirror image', () => {
    const hs = acrossStrings(PLACES, 3.6, 4.5);
    const left = PLACES.map((x) => -x);
    const image = showings(9.858, acrossStrings(left, 3.6, 4.5), 406.4, crowned(9.5, 500), left);
    expect(image).toEqual(showings(9.858, hs, 406.4, crowned(9.5, 500)));
  });
});
