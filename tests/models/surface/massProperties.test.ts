import { expect, test } from 'vitest';
import { surfaceFigures } from '../../../models/surface/figures.ts';
import { massProperties } from '../../../models/surface/massProperties.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { disc, hole, level, slab, slotOf } from './slab.ts';

// Moments of inertia of elementary bodies of density one: standard formulas, or derived where they say so.

const near = (found: number, exact: number, scale: number, what: string) =>
  expect(Math.abs(found - exact) / scale, `${what}: ${found} against ${exact}`).toBeLessThan(1e-6);

test('a block: V(b² + c²)/12 about each axis, no products', () => {
  const [a, b, c] = [155, 32, 9];
  const { volumeMm3: V, inertiaMm5: i } = massProperties(slab(a, b, c), 'drilled');
  near(i.xx, (V * (b * b + c * c)) / 12, i.zz, 'xx');
  near(i.yy, (V * (a * a + c * c)) / 12, i.zz, 'yy');
  near(i.zz, (V * (a * a + b * b)) / 12, i.zz, 'zz');
  for (const product of [i.xy, i.xz, i.yz]) near(product, 0, i.zz, 'product');
});

test('a round block: V·r²/2 about its axis, V(3r² + h²)/12 across', () => {
  const [r, h] = [20, 9];
  const { volumeMm3: V, inertiaMm5: i } = massProperties(slab(0, 0, h, { outline: disc(r) }), 'drilled');
  near(V, Math.PI * r * r * h, V, 'volume');
  near(i.zz, (V * r * r) / 2, i.zz, 'zz');
  near(i.xx, (V * (3 * r * r + h * h)) / 12, i.zz, 'xx');
  near(i.yy, i.xx, i.zz, 'yy');
});

test('a block whose top falls along x leans its axes: xz = −∫xz dV (derived)', () => {
  const [a, b, h, k] = [60, 30, 9, 0.1];
  const {
    volumeMm3: V,
    centroidMm,
    inertiaMm5: i,
  } = massProperties(slab(a, b, h, { profile: level(h, k) }), 'drilled');
  // over x stands h − k·x: ∫x·z dV = b·∫x(h − kx)²/2 dx
  const about = (-b * h * k * a ** 3) / 12;
  near(i.xz, -(about - V * centroidMm[0] * centroidMm[2]), i.zz, 'xz');
  near(i.xy, 0, i.zz, 'xy');
});

test('a hole takes its cylinder’s moments, carried to the common centroid by the parallel axis theorem', () => {
  const [a, b, h, r] = [100, 30, 14, 3];
  const [x, y] = [20, 5];
  const { centroidMm: c, inertiaMm5: i } = massProperties(
    slab(a, b, h, { pins: [hole([x, y], h, [r, -2], [r, h + 1])] }),
    'reamed',
  );
  const [whole, lost] = [a * b * h, Math.PI * r * r * h];
  const zz =
    (whole * (a * a + b * b)) / 12 +
    whole * (c[0] ** 2 + c[1] ** 2) -
    (lost * r * r) / 2 -
    lost * ((x - c[0]) ** 2 + (y - c[1]) ** 2);
  near(i.zz, zz, i.zz, 'zz');
  const xy = -(whole * c[0] * c[1] - lost * (x - c[0]) * (y - c[1]));
  near(i.xy, xy, i.zz, 'xy');
});

test('a slot takes a block’s moments', () => {
  const [a, b, h] = [100, 30, 9];
  const [width, depth] = [3, 5];
  const slot = slotOf(width, a, depth, { roundEnds: false });
  const { centroidMm: c, inertiaMm5: i } = massProperties(slab(a, b, h, { slot }), 'drilled');
  const [whole, lost] = [a * b * h, a * width * depth];
  const yy =
    (whole * (a * a + h * h)) / 12 +
    whole * (h / 2 - c[2]) ** 2 -
    (lost * (a * a + depth * depth)) / 12 -
    lost * (h - depth / 2 - c[2]) ** 2;
  near(i.yy, yy, i.zz, 'yy');
});

test('over random designs: the same volume and centroid as the figures say, a tensor that bodies can have', () => {
  const { accepted } = acceptedDesigns(25, 41);
  for (const [k, { curves }] of accepted.entries()) {
    for (const holes of ['drilled', 'reamed'] as const) {
      const { volumeMm3, centroidMm, inertiaMm5: i } = massProperties(curves, holes);
      const figures = surfaceFigures(curves, holes);
      expect(volumeMm3).toBe(figures.volumeMm3);
      expect(centroidMm).toEqual(figures.centroidMm);
      const what = `design ${k}, ${holes}: ${JSON.stringify(i)}`;
      // a plate that is long, less wide and thin
      expect(i.xx, what).toBeLessThan(i.yy);
      expect(i.yy, what).toBeLessThan(i.zz);
      expect(i.xx + i.yy, what).toBeGreaterThan(i.zz);
      expect(i.xx * i.yy - i.xy ** 2, what).toBeGreaterThan(0);
      expect(i.xx * i.zz - i.xz ** 2, what).toBeGreaterThan(0);
      expect(i.yy * i.zz - i.yz ** 2, what).toBeGreaterThan(0);
    }
  }
});
