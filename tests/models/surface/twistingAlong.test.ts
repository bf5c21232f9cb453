import { describe, expect, test } from 'vitest';
import { rectangleTorsion } from '../../../models/surface/rectangleTorsion.ts';
import { twistingAlong } from '../../../models/surface/twistingAlong.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { level, slab, slotOf } from './slab.ts';

/** Saint-Venant's series for a rectangle of width b and height t ≤ b: derived, standard in every handbook. */
function series(b: number, t: number): number {
  let sum = 0;
  for (let n = 1; n < 60; n += 2) sum += Math.tanh((n * Math.PI * b) / (2 * t)) / n ** 5;
  return b * t ** 3 * (1 / 3 - (64 / Math.PI ** 5) * (t / b) * sum);
}

test.each([
  [9, 9],
  [12, 9],
  [20, 9],
  [32, 9],
  [300, 9],
])('a rectangle %d × %d twists as the series says, within half a percent, whichever way it lies', (b, t) => {
  expect(Math.abs(rectangleTorsion(b, t) / series(b, t) - 1)).toBeLessThan(5e-3);
  expect(rectangleTorsion(t, b)).toBe(rectangleTorsion(b, t));
});

describe('along blocks', () => {
  test('a prism: J everywhere; half a couple to either side that dies away evenly turns the middle by L/8GJ', () => {
    const { stations, middleMm4, middleToTipsDegGPaPerNm } = twistingAlong(slab(155, 32, 9), 'drilled');
    const J = rectangleTorsion(32, 9);
    for (const s of stations) expect(s.torsionMm4 / J, `J at ${s.x}`).toBeCloseTo(1, 6);
    expect(middleMm4 / J).toBeCloseTo(1, 6);
    // 1 N·m and 1 GPa are 1000 N·mm and 1000 N/mm²
    expect(middleToTipsDegGPaPerNm / ((155 / (8 * J)) * (180 / Math.PI))).toBeCloseTo(1, 5);
  });

  test('a deep slot parts the block in two bars and a strip', () => {
    const [width, depth] = [3, 6];
    const { middleMm4 } = twistingAlong(slab(100, 31, 9, { slot: slotOf(width, 80, depth) }), 'drilled');
    const exact = 2 * rectangleTorsion(14, 9) + (width * 3 ** 3) / 3;
    expect(middleMm4 / exact).toBeCloseTo(1, 6);
  });

  test('a shallow one makes the whole thinner', () => {
    const { middleMm4 } = twistingAlong(slab(100, 31, 9, { slot: slotOf(3, 80, 2) }), 'drilled');
    expect(middleMm4 / rectangleTorsion(31, 9 - 6 / 31)).toBeCloseTo(1, 6);
  });

  test('the middle of a taper has the height between', () => {
    const { middleMm4 } = twistingAlong(slab(60, 32, 6, { profile: level(6, 0.1) }), 'drilled');
    expect(middleMm4 / rectangleTorsion(32, 6)).toBeCloseTo(1, 3);
  });
});

test('over random designs: no wood is stiffer in torsion than the same wood without slot, holes and edge', () => {
  const { accepted } = acceptedDesigns(12, 44);
  for (const [i, { curves }] of accepted.entries()) {
    const plain = twistingAlong(
      { ...curves, edge: { kind: 'none' }, pins: [], channels: [], slot: { ...curves.slot, depth: -100 } },
      'reamed',
    );
    const own = twistingAlong(curves, 'reamed');
    expect(own.middleMm4, `design ${i}`).toBeGreaterThan(0);
    expect(own.middleMm4, `design ${i}`).toBeLessThan(plain.middleMm4);
    const turn = own.middleToTipsDegGPaPerNm;
    expect(turn, `design ${i}`).toBeGreaterThan(plain.middleToTipsDegGPaPerNm);
    expect(turn, `design ${i}`).toBeLessThan(20 * plain.middleToTipsDegGPaPerNm);
  }
});
