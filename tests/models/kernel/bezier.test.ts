import { expect, test } from 'vitest';
import { chebyshev, fitBezier, polesThrough } from '../../../models/kernel/bezier.ts';

const quarter = (t: number) => [Math.cos((t * Math.PI) / 2), Math.sin((t * Math.PI) / 2)];
const bezier = (poles: readonly (readonly number[])[], t: number) => {
  // Bernstein's form, where the fit uses de Casteljau's
  const n = poles.length - 1;
  const choose = (k: number): number => (k === 0 ? 1 : (choose(k - 1) * (n - k + 1)) / k);
  return [0, 1].map((d) =>
    poles.reduce((sum, p, i) => sum + choose(i) * t ** i * (1 - t) ** (n - i) * (p[d] as number), 0),
  );
};

test('a straight is of degree 1', () => {
  const { poles, off } = fitBezier((t) => [3 * t, 1 - t], 1e-9);
  expect(poles).toHaveLength(2);
  expect(off).toBeLessThan(1e-12);
});

test('what is odd about its middle is no straight', () => {
  const { poles, off } = fitBezier((t) => [t, Math.sin(2 * Math.PI * t) / 10], 1e-9);
  expect(poles.length).toBeGreaterThan(2);
  // the fit says itself how far it strays: no less than it does on a dense walk, but for what lies between
  let worst = 0;
  for (let t = 0; t <= 1; t += 0.001) {
    const [, y] = bezier(poles, t);
    worst = Math.max(worst, Math.abs((y as number) - Math.sin(2 * Math.PI * t) / 10));
  }
  expect(off).toBeGreaterThan(worst / 2);
});

test('a cubic is of degree 3 and has its own poles', () => {
  const cubic = (t: number) => [t ** 3, 3 * t * t * (1 - t)];
  const { poles } = fitBezier(cubic, 1e-9);
  expect(poles).toHaveLength(4);
  expect((poles[2] as number[])[1]).toBeCloseTo(1, 12);
});

test('a quarter of a circle keeps its radius within a hundred-millionth, everywhere', () => {
  const { poles, off } = fitBezier(quarter, 1e-9);
  for (let t = 0; t <= 1; t += 0.01) {
    expect(Math.abs(Math.hypot(...bezier(poles, t)) - 1), `radius at ${t}`).toBeLessThan(1e-8);
  }
  expect(off).toBeLessThan(1e-8);
});

test('what is too bent for one piece is said to stray', () => {
  const { off } = fitBezier((t) => [Math.cos(9 * t), Math.sin(9 * t)], 1e-9);
  expect(off).toBeGreaterThan(1e-3);
});

test('interpolation passes through its places, ends exactly', () => {
  const at = chebyshev(6).map((t) => [Math.exp(t), t]);
  const poles = polesThrough(at);
  expect(poles[0]?.[0]).toBeCloseTo(1, 12);
  expect(poles[6]?.[0]).toBeCloseTo(Math.E, 12);
  chebyshev(6).forEach((t, i) => {
    expect(bezier(poles, t)[0]).toBeCloseTo((at[i] as number[])[0] as number, 12);
  });
});
