import { expect, test } from 'vitest';
import { chainLines } from '../../../src/app/viewport/chainLines.ts';
import { hatchSpacing } from '../../../src/app/viewport/cutMaterial.ts';

test('centre lines cross in the middle of a long dash and run beyond the part', () => {
  const lines = chainLines([-77, -17, -0.4, 77, 19, 9.6], -0.5);
  const segments = Array.from({ length: lines.length / 6 }, (_, i) => [...lines.slice(6 * i, 6 * i + 6)]);
  const across = segments.filter(([, y0, , , y1]) => y0 === 0 && y1 === 0);
  const along = segments.filter(([x0, , , x1]) => x0 === 0 && x1 === 0);
  expect(across.length + along.length).toBe(segments.length);
  expect(across.some(([x0, , , x1]) => x0 === -4 && x1 === 4)).toBe(true);
  expect(along.some(([, y0, , , y1]) => y0 === -4 && y1 === 4)).toBe(true);
  expect(Math.min(...across.map(([x]) => x as number))).toBeLessThan(-77);
  expect(Math.max(...across.map(([, , , x]) => x as number))).toBeGreaterThan(77);
  for (const segment of segments) expect([segment[2], segment[5]]).toEqual([-0.5, -0.5]);
});

test('hatching stays 6 to 12 px apart at every size, in steps of two', () => {
  for (let mmPerPixel = 0.01; mmPerPixel < 2; mmPerPixel *= 1.17) {
    const pixels = hatchSpacing(mmPerPixel) / mmPerPixel;
    expect(pixels, `at ${mmPerPixel} mm a pixel`).toBeGreaterThanOrEqual(6);
    expect(pixels, `at ${mmPerPixel} mm a pixel`).toBeLessThanOrEqual(12.1);
    expect(Math.log2(hatchSpacing(mmPerPixel) / 1.5) % 1).toBeCloseTo(0, 9);
  }
});
