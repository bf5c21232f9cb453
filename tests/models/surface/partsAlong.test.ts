import { expect, test } from 'vitest';
import { bendingAlong } from '../../../models/surface/bendingAlong.ts';
import { deflection } from '../../../models/surface/deflection.ts';
import { massProperties } from '../../../models/surface/massProperties.ts';
import { partsAlong } from '../../../models/surface/partsAlong.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { level, slab } from './slab.ts';

test('a prism: lengths times section; a third of the give comes as x³ says (derived)', () => {
  const { leftWing, block, rightWing } = partsAlong(slab(150, 32, 9), 'drilled', 90);
  expect(block.volumeMm3).toBeCloseTo(90 * 288, 2);
  expect(leftWing.volumeMm3).toBeCloseTo(30 * 288, 2);
  expect(rightWing.volumeMm3).toBeCloseTo(30 * 288, 2);
  expect(block.centroidMm[0]).toBeCloseTo(0, 6);
  expect(leftWing.centroidMm[0]).toBeCloseTo(-60, 5);
  expect(rightWing.centroidMm[2]).toBeCloseTo(4.5, 9);
  expect([leftWing.toMm, block.fromMm, block.toMm, rightWing.fromMm]).toEqual([-45, -45, 45, 45]);
  // ∫(d/2)² dd over the wing's 30 of the half's 75: (30/75)³ of each half
  expect(leftWing.flexShare).toBeCloseTo(0.4 ** 3 / 2, 5);
  expect(leftWing.flexShare + block.flexShare + rightWing.flexShare).toBeCloseTo(1, 9);
  expect(block.leastSecondMm4).toBeCloseTo(1944, 6);
});

test('a taper: its thin wing has less wood and gives more', () => {
  const { leftWing, rightWing } = partsAlong(slab(60, 32, 6, { profile: level(6, 0.1) }), 'drilled', 20);
  // heights 9 … 7 on the left, 5 … 3 on the right
  expect(leftWing.volumeMm3).toBeCloseTo(32 * 20 * 8, 1);
  expect(rightWing.volumeMm3).toBeCloseTo(32 * 20 * 4, 1);
  expect(rightWing.leastSecondMm4).toBeCloseTo((32 * 27) / 12, 3);
  expect(rightWing.flexPerMm).toBeGreaterThan(leftWing.flexPerMm);
});

test('a block as long as the bridge leaves no wings', () => {
  const { leftWing, block } = partsAlong(slab(100, 30, 9), 'drilled', 120);
  expect(leftWing.volumeMm3).toBe(0);
  expect(block.volumeMm3).toBeCloseTo(100 * 270, 2);
});

test('over random designs: parts make up the whole, wood, centroid and give', () => {
  const { accepted } = acceptedDesigns(12, 45);
  for (const [i, { curves, design }] of accepted.entries()) {
    const all = Object.values(partsAlong(curves, 'reamed', design.top.block));
    const whole = massProperties(curves, 'reamed');
    const volume = all.reduce((sum, part) => sum + part.volumeMm3, 0);
    expect(Math.abs(volume / whole.volumeMm3 - 1), `volume of design ${i}`).toBeLessThan(1e-3);
    for (const k of [0, 1, 2] as const) {
      const middle = all.reduce((sum, part) => sum + part.volumeMm3 * part.centroidMm[k], 0) / volume;
      expect(Math.abs(middle - whole.centroidMm[k]), `centroid ${k} of design ${i}`).toBeLessThan(0.02);
    }
    const flex = all.reduce((sum, part) => sum + part.flexPerMm, 0);
    const give = deflection(bendingAlong(curves, 'reamed'), 12, 100);
    expect(((flex * 100) / 12_000 / give).toFixed(9), `give of design ${i}`).toBe('1.000000000');
  }
});
