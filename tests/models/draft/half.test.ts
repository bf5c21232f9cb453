import { describe, expect, test } from 'vitest';
import { chainLength, distanceTo, enclosedArea, isInside } from '../../../models/curves/chain.ts';
import {
  chordDeviation,
  chordsOf,
  type Half,
  halvesOf,
  levelsOf,
  placeOn,
} from '../../../models/draft/half.ts';
import { curves } from '../../support/change.ts';
import { disc, rounded } from '../surface/slab.ts';

const outlines = (['square', 'bowed', 'round'] as const).map((tip) => ({
  tip,
  outline: curves({ 'footprint.tip': tip, 'footprint.frontEdge': 'soundhole', 'footprint.backForm': 'taper' })
    .outline,
}));
const along = (half: Half, n: number) =>
  Array.from({ length: n + 1 }, (_, i) => placeOn(half, (i * half.length) / n));

describe.each(outlines)('an outline with a $tip tip', ({ tip, outline }) => {
  const { back, front } = halvesOf(outline);

  test('has halves that make it up, but for straight tips', () => {
    const ends = [0, 1].map((k) => placeOn(front, k * front.length).y - placeOn(back, k * back.length).y);
    if (tip !== 'square') for (const gap of ends) expect(gap).toBeCloseTo(0, 9);
    else for (const gap of ends) expect(gap).toBeGreaterThan(10);
    expect(back.length + front.length + ends.reduce((a, b) => a + b)).toBeCloseTo(chainLength(outline), 8);
  });

  test('has places that lie on it, run toward +x and have the wood on the side that is said', () => {
    for (const half of [back, front]) {
      let x = Number.NEGATIVE_INFINITY;
      for (const p of along(half, 200)) {
        expect(distanceTo(outline, [p.x, p.y])).toBeLessThan(1e-9);
        expect(Math.hypot(p.dx, p.dy)).toBeCloseTo(1, 9);
        expect(p.x).toBeGreaterThanOrEqual(x);
        x = p.x;
        const inward = [-half.inside * p.dy, half.inside * p.dx] as const;
        expect(isInside(outline, [p.x + 1e-3 * inward[0], p.y + 1e-3 * inward[1]])).toBe(true);
      }
    }
  });

  test('is level where its y is greatest and least', () => {
    const most = Math.max(...along(front, 5000).map((p) => p.y));
    const levels = levelsOf(front).map((s) => placeOn(front, s));
    for (const p of levels) expect(p.dy).toBeCloseTo(0, 9);
    const ends = front.pieces.map(({ start }) => placeOn(front, start));
    expect(Math.max(...[...levels, ...ends].map((p) => p.y))).toBeGreaterThanOrEqual(most - 1e-9);
  });
});

test('chords stay within the deviation', () => {
  const { back } = halvesOf(rounded(100, 30, 8));
  const chords = chordsOf(back, 0.02);
  for (let i = 1; i < chords.length; i++) {
    const [a, b] = [chords[i - 1], chords[i]].map((s) => placeOn(back, s as number));
    const middle = placeOn(back, ((chords[i - 1] as number) + (chords[i] as number)) / 2);
    expect(
      Math.hypot(middle.x - ((a?.x ?? 0) + (b?.x ?? 0)) / 2, middle.y - ((a?.y ?? 0) + (b?.y ?? 0)) / 2),
    ).toBeLessThan(0.02);
  }
  expect(chords.length).toBeLessThan(40);
});

test('a circle’s halves enclose it', () => {
  const { back, front } = halvesOf(disc(20));
  const polygon = [
    ...chordsOf(back, 1e-4).map((s) => placeOn(back, s)),
    ...chordsOf(front, 1e-4)
      .map((s) => placeOn(front, s))
      .reverse(),
  ];
  const twice = polygon.reduce((sum, p, i) => {
    const q = polygon[(i + 1) % polygon.length] as typeof p;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  expect(twice / 2 / enclosedArea(disc(20))).toBeCloseTo(1, 4);
});

test('large arcs are given less deviation, small ones all of it', () => {
  expect(chordDeviation(2, 0.02)).toBe(0.02);
  expect(chordDeviation(406, 0.02)).toBeLessThan(0.01);
  expect(chordDeviation(7620, 0.02) / chordDeviation(7620 / 8, 0.02)).toBeCloseTo(0.5, 12);
});
