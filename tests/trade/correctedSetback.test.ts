import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { correctedSetback } from '../../src/trade/correctedSetback.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** One steel string by I2, written out here for itself. */
interface Steel {
  readonly scale: number;
  readonly h0: number;
  readonly hs: number;
  /** E·A/T and √(E·I/(T·S²)). */
  readonly kappa: number;
  readonly e0: number;
}

/** Cents of the 12th fret against the open string's octave, ends clamped (α = 2). */
function cents12({ scale, h0, hs, kappa, e0 }: Steel, dS: number, dN: number): number {
  const fretted = scale / 2;
  const open = Math.hypot(scale + dS + dN, hs - h0);
  const long = Math.hypot(fretted + dS, hs);
  const q = (long + Math.hypot(scale - fretted + dN, h0) - open) / open;
  const stiff = (b: number) => 1 + 2 * b + (4 + Math.PI ** 2 / 2) * b * b;
  const bn = (e0 * (scale / long)) / Math.sqrt(1 + kappa * q);
  const ratio = open / (2 * long);
  return (
    1200 * Math.log2(ratio * Math.sqrt((1 + q) * (1 + kappa * q)) * (stiff(bn) / stiff((e0 * scale) / open)))
  );
}

const steel: Steel = { scale: 645.16, h0: 0.24, hs: 3.96, kappa: 130, e0: 0.0021 };

describe('the set-back that the measured cents ask for', () => {
  test('a cent on 645.16 mm is scale·ln 2/1200 = 0.3727 mm, for small errors (derived)', () => {
    const at = (cents: number) => correctedSetback({ scale: 645.16, setback: 0, nutSetback: 0, cents });
    expect((at(0.01) - at(-0.01)) / 0.02).toBeCloseTo((645.16 * Math.LN2) / 1200, 5);
    expect((645.16 * Math.LN2) / 1200).toBeCloseTo(0.3727, 4);
  });

  test('sharp asks for more set-back, flat for less, in tune for none', () => {
    const note = { scale: 645, setback: 3.9, nutSetback: 0 };
    expect(correctedSetback({ ...note, cents: 3 })).toBeGreaterThan(3.9);
    expect(correctedSetback({ ...note, cents: -3 })).toBeLessThan(3.9);
    expect(correctedSetback({ ...note, cents: 0 })).toBeCloseTo(3.9, 12);
  });

  test('a guitar of lengths only, with any constant error of its fretted notes: 0 cents after the correction', () => {
    fc.assert(
      fc.property(
        mm(500, 900),
        mm(-2, 9),
        mm(-1, 1),
        mm(-15, 30),
        (scale, setback, nutSetback, sharpening) => {
          const cents = (dS: number) =>
            1200 * Math.log2((scale + dS + nutSetback) / (2 * (scale / 2 + dS))) + sharpening;
          const corrected = correctedSetback({ scale, setback, nutSetback, cents: cents(setback) });
          expect(cents(corrected)).toBeCloseTo(0, 9);
        },
      ),
      { seed: 313, numRuns: 200 },
    );
  });

  test('a stiff, stretched string (I2): one correction takes all but a thirtieth of the error, a second of that', () => {
    fc.assert(
      fc.property(mm(-2, 9), mm(20, 200), mm(5e-4, 4e-3), (setback, kappa, e0) => {
        const string = { ...steel, kappa, e0 };
        const step = (dS: number) =>
          correctedSetback({ scale: steel.scale, setback: dS, nutSetback: 0, cents: cents12(string, dS, 0) });
        const error = (dS: number) => Math.abs(cents12(string, dS, 0));
        const once = step(setback);
        expect(error(once), 'after one').toBeLessThanOrEqual(error(setback) / 30 + 1e-9);
        expect(error(step(once)), 'after two').toBeLessThanOrEqual(error(once) / 30 + 1e-9);
      }),
      { seed: 314, numRuns: 200 },
    );
  });

  test('from 0.8 mm short of where a bisection of I2 finds the string in tune, it finds that within 0.02 mm', () => {
    let [short, long] = [-5, 20];
    while (long - short > 1e-10) {
      const middle = (short + long) / 2;
      if (cents12(steel, middle, 0) > 0) short = middle;
      else long = middle;
    }
    const cents = cents12(steel, short - 0.8, 0);
    const note = { scale: steel.scale, setback: short - 0.8, nutSetback: 0, cents };
    expect(Math.abs(correctedSetback(note) - short)).toBeLessThan(0.02);
  });

  test('a note so sharp that no saddle cures it is refused', () => {
    expect(() => correctedSetback({ scale: 645, setback: 0, nutSetback: 0, cents: 1200 })).toThrow(
      /1200 cents/,
    );
  });
});
