import { expect, test } from 'vitest';
import { woodColours } from '../../../src/app/viewport/woodColours.ts';
import { WOODS } from '../../../src/trade/woods.ts';

/** Relative luminance of a CSS colour (WCAG 2.2). */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

test('every wood of the list looks like itself: no two have one colour, and one rests on the palette', () => {
  const grounds = WOODS.map(({ name }) => woodColours(name).wood);
  expect(new Set(grounds).size).toBe(WOODS.length);
  expect(grounds.filter((ground) => ground === undefined)).toHaveLength(1);
});

test.each(WOODS.map(({ name }) => name).filter((name) => woodColours(name).wood))(
  '%s: dark streaks, ground, light and fresh wood in this order, edges apart from the ground',
  (name) => {
    const { wood = '', woodLight = '', woodDark = '', woodFresh = '', edge = '' } = woodColours(name);
    const order = [woodDark, wood, woodLight, woodFresh].map(luminance);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    const [low, high] = [luminance(edge), luminance(wood)].sort((a, b) => a - b) as [number, number];
    expect((high + 0.05) / (low + 0.05)).toBeGreaterThan(1.6);
  },
);

test('a wood of one’s own is drawn in the palette’s colours', () => {
  expect(woodColours('My plum')).toEqual({});
  expect(woodColours('toString')).toEqual({});
});
