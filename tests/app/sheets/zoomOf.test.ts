import { expect, test } from 'vitest';
import { steppedZoom, zoomOf } from '../../../src/app/sheets/zoomOf.ts';
import { PAPERS } from '../../../src/sheets/sheet.ts';

const { A4 } = PAPERS;
/** CSS: 96 px an inch. */
const px = (mm: number) => (mm * 96) / 25.4;

test('a whole page fits both ways, page width one way', () => {
  for (const [width, height] of [
    [700, 500],
    [1200, 400],
    [500, 900],
  ] as const) {
    const whole = zoomOf('page', A4, { width, height });
    expect(whole * px(A4.width), `${width} × ${height}`).toBeLessThan(width);
    expect(whole * px(A4.height), `${width} × ${height}`).toBeLessThan(height);
    const wide = zoomOf('width', A4, { width, height });
    expect(width - wide * px(A4.width), 'room left and right').toBeCloseTo(28, 6);
    expect(wide).toBeGreaterThanOrEqual(whole);
  }
});

test('full size is full size whatever the room, and until the room is known', () => {
  expect(zoomOf(1, A4, { width: 100, height: 100 })).toBe(1);
  expect(zoomOf('page', A4, undefined)).toBe(1);
});

test('steps there and back come to the same, and end somewhere', () => {
  expect(steppedZoom(steppedZoom(1, 1), -1)).toBeCloseTo(1, 12);
  let [near, far] = [1, 1];
  for (let i = 0; i < 50; i++) [near, far] = [steppedZoom(near, 1), steppedZoom(far, -1)];
  expect([near, far]).toEqual([6, 0.2]);
  expect(zoomOf('page', A4, { width: 30, height: 30 })).toBe(0.2);
});
