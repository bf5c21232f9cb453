import { expect, test } from 'vitest';
import { surfaceFigures } from '../../../models/surface/figures.ts';
import { glueFace } from '../../../models/surface/glueFace.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { disc, hole, rounded, slab } from './slab.ts';

// Areas and second moments of plane figures: standard formulas.

const near = (found: number, exact: number, what: string) =>
  expect(Math.abs(found / exact - 1), `${what}: ${found} against ${exact}`).toBeLessThan(1e-9);

test('a rectangle: b·d, bd³/12 and db³/12, half its depth to front and back', () => {
  const face = glueFace(slab(155, 32, 9), 'drilled');
  near(face.areaMm2, 155 * 32, 'area');
  near(face.secondMm4.x, (155 * 32 ** 3) / 12, 'about X');
  near(face.secondMm4.y, (32 * 155 ** 3) / 12, 'about Y');
  expect(face.secondMm4.xy).toBeCloseTo(0, 6);
  expect(face.frontMm).toBeCloseTo(16, 9);
  expect(face.backMm).toBeCloseTo(16, 9);
});

test('a disc: πr² and πr⁴/4', () => {
  const face = glueFace(slab(0, 0, 9, { outline: disc(20) }), 'drilled');
  near(face.areaMm2, Math.PI * 400, 'area');
  near(face.secondMm4.x, (Math.PI * 20 ** 4) / 4, 'about X');
  near(face.secondMm4.y, (Math.PI * 20 ** 4) / 4, 'about Y');
});

test('a plate with half-round ends: a rectangle and the halves of a disc', () => {
  const [length, depth] = [150, 30];
  const r = depth / 2;
  const middle = length - depth;
  const face = glueFace(slab(0, 0, 9, { outline: rounded(length, depth, r) }), 'drilled');
  near(face.areaMm2, middle * depth + Math.PI * r * r, 'area');
  near(face.secondMm4.x, (middle * depth ** 3) / 12 + (Math.PI * r ** 4) / 4, 'about X');
  // each half's centroid lies 4r/3π beyond the rectangle's end
  const half = (Math.PI * r * r) / 2;
  const own = (Math.PI * r ** 4) / 8 - half * ((4 * r) / (3 * Math.PI)) ** 2;
  const away = middle / 2 + (4 * r) / (3 * Math.PI);
  near(face.secondMm4.y, (depth * middle ** 3) / 12 + 2 * (own + half * away * away), 'about Y');
});

test('holes are taken as wide as they meet the glue face, and the centroid moves away from them', () => {
  const [a, b, x, y] = [100, 30, 20, 5];
  // 2 mm below the face it is narrower, above it wider
  const pins = [hole([x, y], 9, [2.3, -2], [2.5, 0], [3, 9], [3.1, 10])];
  const face = glueFace(slab(a, b, 9, { pins }), 'reamed');
  const lost = Math.PI * 2.5 ** 2;
  near(face.areaMm2, a * b - lost, 'area');
  const [cx, cy] = face.centroidMm;
  near(cx, (-lost * x) / (a * b - lost), 'centroid x');
  near(cy, (-lost * y) / (a * b - lost), 'centroid y');
  near(
    face.secondMm4.x,
    (a * b ** 3) / 12 + a * b * cy * cy - (Math.PI * 2.5 ** 4) / 4 - lost * (y - cy) ** 2,
    'about X',
  );
  near(face.secondMm4.xy, a * b * cx * cy - lost * (x - cx) * (y - cy), 'product');
  expect(face.frontMm).toBeCloseTo(b / 2 - cy, 9);
  expect(face.backMm).toBeCloseTo(b / 2 + cy, 9);
});

test('over random designs: reaming takes glue face only where it widens the foot; a plate on it would be the box’s part', () => {
  const { accepted } = acceptedDesigns(25, 42);
  for (const [i, { curves }] of accepted.entries()) {
    const [drilled, reamed] = [glueFace(curves, 'drilled'), glueFace(curves, 'reamed')];
    expect(reamed.areaMm2, `design ${i}`).toBeLessThanOrEqual(drilled.areaMm2 + 1e-9);
    const [x0, y0, , x1, y1] = surfaceFigures(curves, 'drilled').boxMm;
    expect(drilled.areaMm2).toBeLessThan((x1 - x0) * (y1 - y0));
    expect(drilled.areaMm2).toBeGreaterThan(0.5 * (x1 - x0) * (y1 - y0));
    expect(drilled.frontMm + drilled.backMm).toBeCloseTo(y1 - y0, 9);
    // a thin plate’s second moments keep Cauchy’s inequality
    expect(drilled.secondMm4.x * drilled.secondMm4.y).toBeGreaterThan(drilled.secondMm4.xy ** 2);
  }
});
