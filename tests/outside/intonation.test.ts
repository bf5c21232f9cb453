import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { CENTS_PER_LN, centsByFret, type Setback } from '../../src/trade/centsError.ts';
import type { IntonationSetup } from '../../src/trade/intonationSetup.ts';
import { setbackClosedForm } from '../../src/trade/setbackClosedForm.ts';
import { setbackLeastSquares } from '../../src/trade/setbackLeastSquares.ts';
import { leastOfTwo } from '../support/leastBySearch.ts';

/*
 * I2 against the 24 rows that Anderson & Beausoleil print, J. Acoust. Soc. Am. 156(1), 683 (2024): nylon and carbon
 * strings, scale 650, heights 1 at the nut and 5 at the saddle, one clamped end, frets 1 to 12. They give a string's
 * radius ρ and stretch constant R, with κ = 2R + 1 and e0 = √κ·ρ/(2·650).
 */
interface Row {
  readonly set: string;
  readonly string: number;
  readonly rho_mm: number;
  readonly R: number;
  readonly dS_mm: number;
  readonly dN_mm: number;
  readonly rms_cents: number;
}

const file = path.join(import.meta.dirname, 'intonation-published.json');
const { rows }: { readonly rows: readonly Row[] } = JSON.parse(readFileSync(file, 'utf8'));

const setupOf = ({ R, rho_mm }: Row): IntonationSetup => ({
  scaleMm: 650,
  heights: { nut: 1, saddle: 5 },
  stretch: 2 * R + 1,
  bending: (Math.sqrt(2 * R + 1) * rho_mm) / (2 * 650),
  clampedEnds: 1,
});

const rms = (cents: readonly number[]) => Math.sqrt(cents.reduce((sum, c) => sum + c ** 2, 0) / cents.length);

/** Errors at frets 1 to 12, cents, as the closed form sees them: linear in both set-backs. */
const linearCents = (setup: IntonationSetup, { saddleMm, nutMm }: Setback) =>
  centsByFret(setup, { saddleMm: 0, nutMm: 0 }).map(
    (cents, i) => cents + (CENTS_PER_LN * (nutMm - (2 ** ((i + 1) / 12) - 1) * saddleMm)) / setup.scaleMm,
  );

test('there are 24 rows', () => expect(rows).toHaveLength(24));

describe.each(rows.map((row) => [`${row.set}, string ${row.string}`, row] as const))('%s', (_name, row) => {
  const setup = setupOf(row);
  const closed = setbackClosedForm(setup, 'solved');

  test('the closed form is as printed: 0.02 mm, 0.01 mm, 0.010 cent', () => {
    expect(Math.abs(closed.saddleMm - row.dS_mm), `dS ${closed.saddleMm}`).toBeLessThanOrEqual(0.02);
    expect(Math.abs(closed.nutMm - row.dN_mm), `dN ${closed.nutMm}`).toBeLessThanOrEqual(0.01);
    const left = rms(linearCents(setup, closed));
    expect(Math.abs(left - row.rms_cents), `rms ${left}`).toBeLessThanOrEqual(0.01);
  });

  test('a search for the least squares of the full error comes within 0.07 mm, and to the same as the program', () => {
    const squares = (saddleMm: number, nutMm: number) => rms(centsByFret(setup, { saddleMm, nutMm })) ** 2;
    const [dS, dN] = leastOfTwo(squares, [0, 6], [-2, 1]);
    expect(Math.abs(dS - row.dS_mm), `dS ${dS}`).toBeLessThanOrEqual(0.07);
    expect(Math.abs(dN - row.dN_mm), `dN ${dN}`).toBeLessThanOrEqual(0.07);
    const solved = setbackLeastSquares(setup, 'solved');
    expect(Math.abs(solved.saddleMm - dS), `dS ${solved.saddleMm}, by search ${dS}`).toBeLessThan(1e-4);
    expect(Math.abs(solved.nutMm - dN), `dN ${solved.nutMm}, by search ${dN}`).toBeLessThan(1e-4);
    const left = rms(centsByFret(setup, solved));
    expect(Math.abs(left - row.rms_cents), `rms ${left}`).toBeLessThanOrEqual(0.01);
    expect(left).toBeLessThanOrEqual(rms(centsByFret(setup, closed)));
  });
});
