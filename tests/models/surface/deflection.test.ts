import { describe, expect, test } from 'vitest';
import { bendingAlong } from '../../../models/surface/bendingAlong.ts';
import { deflection } from '../../../models/surface/deflection.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { level, slab } from './slab.ts';

const bending = (curves: ReturnType<typeof slab>) => bendingAlong(curves, 'drilled');

describe('standard beam formulas', () => {
  test('a prism 32 × 9 on supports 155 apart: FL³/48EI = 0.32445 mm at 100 N and 12.3 GPa', () => {
    expect(deflection(bending(slab(155, 32, 9)), 12.3, 100)).toBeCloseTo(0.32445, 5);
  });

  test('on supports nearer to each other, by the cube of their distance', () => {
    const held = { kind: 'supports', from: -40, to: 37.5 } as const;
    expect(deflection(bending(slab(155, 32, 9)), 12.3, 100, held)).toBeCloseTo(0.32445 / 8, 5);
  });

  test('a prism clamped at one end: FL³/3EI', () => {
    const held = { kind: 'clamped', clamp: -30, load: 30 } as const;
    const exact = (100 * 60 ** 3) / (3 * 12_300 * 1944);
    expect(deflection(bending(slab(155, 32, 9)), 12.3, 100, held)).toBeCloseTo(exact, 6);
  });
});

test('a cantilever that tapers from 9 to 3 over 60: 0.63940 mm at 100 N and 12.3 GPa (derived, closed form)', () => {
  // ∫ 12F·d²/(E·b·(3 + 0.1d)³) dd from 0 to 60 = 12F/(Eb)·1000·[ln t + 6/t − 4.5/t²] between t = 3 and 9
  const closed =
    ((12 * 100 * 1000) / (12_300 * 32)) * (Math.log(3) + 6 * (1 / 9 - 1 / 3) - 4.5 * (1 / 81 - 1 / 9));
  expect(closed).toBeCloseTo(0.6394, 5);
  const taper = bending(slab(60, 32, 6, { profile: level(6, 0.1) }));
  const held = { kind: 'clamped', clamp: -30, load: 30 } as const;
  expect(deflection(taper, 12.3, 100, held)).toBeCloseTo(0.6394, 5);
});

test('over random designs: as much as the load, as little as the wood is stiff, more when reamed', () => {
  const { accepted } = acceptedDesigns(12, 43);
  for (const [i, { curves }] of accepted.entries()) {
    const [drilled, reamed] = [bendingAlong(curves, 'drilled'), bendingAlong(curves, 'reamed')];
    const one = deflection(drilled, 12, 100);
    expect(one, `design ${i}`).toBeGreaterThan(0);
    expect(deflection(drilled, 24, 300) / one, `design ${i}`).toBeCloseTo(1.5, 9);
    expect(deflection(reamed, 12, 100) / one, `design ${i}, reamed`).toBeGreaterThan(1 - 1e-3);
  }
});
