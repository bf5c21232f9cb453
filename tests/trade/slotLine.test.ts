import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { setbackInTune } from '../../src/trade/setbackInTune.ts';
import { type SlotRule, slotLine } from '../../src/trade/slotLine.ts';
import { LIGHT_PLACES, lightSetups } from '../support/lightSet.ts';

const RULES: readonly SlotRule[] = ['least-squares', 'smallest-largest'];
const RUNS = { seed: 2611, numRuns: 300 };
/** Strings treble to bass, half a millimetre apart at least. */
const places = (minLength: number) =>
  fc
    .tuple(
      fc.double({ min: 20, max: 35, noNaN: true }),
      fc.array(
        fc.record({
          gapMm: fc.double({ min: 0.5, max: 12, noNaN: true }),
          setbackMm: fc.double({ min: -1, max: 9, noNaN: true }),
        }),
        { minLength, maxLength: 12 },
      ),
    )
    .map(([firstMm, list]) => {
      let xMm = firstMm;
      return list.map(({ gapMm, setbackMm }) => {
        xMm -= gapMm;
        return { xMm, setbackMm };
      });
    });
const largest = (residuals: readonly number[]) => Math.max(...residuals.map(Math.abs));
const squares = (residuals: readonly number[]) => residuals.reduce((sum, r) => sum + r * r, 0);

describe.each([
  // derived, by two independent programs: cents at fret 12 = 0, nut without set-back
  [1, [1.676, 3.1609, 1.2768, 2.1945, 3.1043, 4.5109], 2.2196, [1.588, 2.6539, 3.7198]],
  [2, [2.5739, 4.7476, 1.9445, 3.2737, 4.5352, 6.4149], 2.9584, [2.4938, 3.915, 5.3362]],
])('I4: the light set with α = %i', (alpha, setbacks, angle, [treble = 0, centre = 0, bass = 0]) => {
  const found = lightSetups(alpha).map((setup) => setbackInTune(setup).saddleMm);
  const line = slotLine(
    found.map((setbackMm, i) => ({ xMm: LIGHT_PLACES[i] ?? 0, setbackMm })),
    'least-squares',
  );

  test('set-backs', () => {
    for (const [i, mm] of setbacks.entries())
      expect(Math.abs((found[i] ?? 0) - mm), `string ${i + 1}: ${found[i]}`).toBeLessThan(0.002);
  });

  test('line', () => {
    expect(Math.abs(line.angleDeg - angle), `${line.angleDeg}°`).toBeLessThan(0.003);
    expect(Math.abs(line.trebleMm - treble)).toBeLessThan(0.002);
    expect(Math.abs(line.centreMm - centre)).toBeLessThan(0.002);
    expect(Math.abs(line.bassMm - bass)).toBeLessThan(0.002);
  });
});

describe.each(RULES)('%s', (rule) => {
  test('strings on a line have it for their slot', () => {
    const line = slotLine(
      [25, 10, 0, -25].map((xMm) => ({ xMm, setbackMm: 4 - 0.05 * xMm })),
      rule,
    );
    expect(line.angleDeg).toBeCloseTo((Math.atan(0.05) * 180) / Math.PI, 10);
    expect([line.trebleMm, line.centreMm, line.bassMm]).toEqual([
      expect.closeTo(2.75, 10),
      expect.closeTo(4, 10),
      expect.closeTo(5.25, 10),
    ]);
    expect(largest(line.residualsMm)).toBeLessThan(1e-12);
  });

  test('mirrored strings have the mirrored angle and the same place', () => {
    fc.assert(
      fc.property(places(2), (strings) => {
        const there = slotLine(strings, rule);
        const mirrored = slotLine(
          strings.map(({ xMm, setbackMm }) => ({ xMm: -xMm, setbackMm })),
          rule,
        );
        // two lines may be equally good: then it is their error that must agree
        expect(largest(mirrored.residualsMm)).toBeCloseTo(largest(there.residualsMm), 8);
        expect(squares(mirrored.residualsMm)).toBeCloseTo(squares(there.residualsMm), 6);
        expect(mirrored.angleDeg).toBeCloseTo(-there.angleDeg, 6);
        expect(mirrored.centreMm).toBeCloseTo(there.centreMm, 6);
      }),
      RUNS,
    );
  });

  test('no other line is better, be nothing, the angle or the centre set', () => {
    const sets = [{}, { angleDeg: 2.5 }, { centreMm: 3 }];
    const nudge = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    const worth = rule === 'least-squares' ? squares : largest;
    fc.assert(
      fc.property(places(2), fc.constantFrom(...sets), nudge, nudge, (strings, set, turn, shift) => {
        const best = slotLine(strings, rule, set);
        const other = slotLine(strings, rule, {
          angleDeg: set.angleDeg ?? best.angleDeg + turn,
          centreMm: set.centreMm ?? best.centreMm + shift,
        });
        expect(worth(best.residualsMm)).toBeLessThanOrEqual(worth(other.residualsMm) * (1 + 1e-12) + 1e-12);
      }),
      RUNS,
    );
  });

  test('what is set stays, and setting what was solved changes nothing', () => {
    fc.assert(
      fc.property(places(2), (strings) => {
        expect(slotLine(strings, rule, { angleDeg: 2.5 }).angleDeg).toBe(2.5);
        expect(slotLine(strings, rule, { centreMm: 3 }).centreMm).toBe(3);
        const solved = slotLine(strings, rule);
        const set = slotLine(strings, rule, { angleDeg: solved.angleDeg, centreMm: solved.centreMm });
        expect(set.angleDeg).toBe(solved.angleDeg);
        expect(set.centreMm).toBe(solved.centreMm);
        for (const [i, r] of set.residualsMm.entries()) expect(r).toBeCloseTo(solved.residualsMm[i] ?? 0, 9);
      }),
      RUNS,
    );
  });

  test('one string, or several in one place, leave the slot square', () => {
    expect(slotLine([{ xMm: 5, setbackMm: 3 }], rule)).toMatchObject({ angleDeg: 0, centreMm: 3 });
    const two = [2, 4].map((setbackMm) => ({ xMm: 5, setbackMm }));
    expect(slotLine(two, rule)).toMatchObject({ angleDeg: 0, centreMm: 3, residualsMm: [-1, 1] });
  });

  test('without strings there is still a line', () => {
    expect(slotLine([], rule)).toMatchObject({ angleDeg: 0, centreMm: 0, residualsMm: [] });
  });
});

test('least squares: residuals sum to zero', () => {
  fc.assert(
    fc.property(places(1), (strings) => {
      const sum = slotLine(strings, 'least-squares').residualsMm.reduce((a, b) => a + b, 0);
      expect(Math.abs(sum)).toBeLessThan(1e-10);
    }),
    RUNS,
  );
});

test('smallest largest error: three strings at least share it, with alternating sign (Chebyshev)', () => {
  fc.assert(
    fc.property(places(3), (strings) => {
      const residuals = slotLine(strings, 'smallest-largest').residualsMm;
      const most = largest(residuals);
      const signs = residuals.filter((r) => Math.abs(r) > most - 1e-9).map(Math.sign);
      const changes = signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
      expect(changes).toBeGreaterThanOrEqual(2);
    }),
    RUNS,
  );
});
