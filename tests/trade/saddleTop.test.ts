import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Point, pointAt } from '../../models/curves/segment.ts';
import { heightOn } from '../../models/curves/topHeight.ts';
import { fretboardDrop } from '../../src/trade/fretboardDrop.ts';
import { greatestHeight, saddleTop } from '../../src/trade/saddleTop.ts';

const PLACES = [27.5, 16.5, 5.5, -5.5, -16.5, -27.5];
const COS = Math.cos((2.96 * Math.PI) / 180);
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Crowns of a guitar whose action rises toward the bass by `more` at the saddle. */
const crowns = (more: number, radius = 406.4, places = PLACES) =>
  places.map((x, i) => ({ x, height: 9 - fretboardDrop(radius, x) + (more * i) / 5 }));

describe('the saddle’s top', () => {
  test('passes through every crown, end to end, from one end of the saddle to the other', () => {
    const strings = crowns(0.9);
    const top = saddleTop(strings, 406.4, 2.96, 73);
    expect(top).toHaveLength(5);
    for (const { x, height } of strings)
      expect(heightOn(top, x / COS), `string at ${x}`).toBeCloseTo(height, 9);
    expect([top[0]?.from[0], top[4]?.to[0]]).toEqual([-36.5, 36.5]);
    top.slice(1).forEach((s, i) => {
      expect(s.from).toEqual(top[i]?.to);
    });
  });

  test('with even action it is the fretboard’s own arc: every place on one circle, also beyond the strings', () => {
    const top = saddleTop(crowns(0), 406.4, 0, 73);
    for (const s of top) {
      for (const t of [0, 0.3, 0.7, 1]) {
        const [u, z] = pointAt(s, t);
        expect(Math.hypot(u, z - (9 - 406.4))).toBeCloseTo(406.4, 6);
      }
    }
    expect(greatestHeight(top)).toBeCloseTo(9, 9);
  });

  test('on a turned slot, between strings, it and beyond, it follows the fretboard’s cylinder within 5e-5 mm', () => {
    const top = saddleTop(crowns(0), 406.4, 2.96, 73);
    for (let x = -36; x <= 36; x += 0.5) {
      expect(Math.abs(heightOn(top, x / COS) - (9 - fretboardDrop(406.4, x))), `x ${x}`).toBeLessThan(5e-5);
    }
  });

  test('the other hand’s template is the mirror image', () => {
    const right = saddleTop(crowns(0.9), 406.4, 2.96, 73);
    const left = saddleTop(
      crowns(
        0.9,
        406.4,
        PLACES.map((x) => -x),
      ),
      406.4,
      -2.96,
      73,
    );
    const flipped = left
      .map((s): Point[] => [s.to, s.from].map(([u, z]): Point => [-u, z]))
      .reverse()
      .flat();
    right
      .flatMap((s) => [s.from, s.to])
      .forEach((p, i) => {
        expect(flipped[i]?.[0]).toBeCloseTo(p[0], 9);
        expect(flipped[i]?.[1]).toBeCloseTo(p[1], 9);
      });
  });

  test('its greatest height is none less than any place of it', () => {
    fc.assert(
      fc.property(mm(-2, 2), mm(200, 2000), mm(60, 80), (more, radius, length) => {
        const top = saddleTop(crowns(more, radius), radius, 2.96, length);
        let most = Number.NEGATIVE_INFINITY;
        for (let i = 0; i <= 2000; i++)
          most = Math.max(most, heightOn(top, -length / 2 + (length * i) / 2000));
        expect(greatestHeight(top)).toBeGreaterThanOrEqual(most - 1e-9);
        expect(greatestHeight(top) - most).toBeLessThan(1e-3);
      }),
      { seed: 309, numRuns: 60 },
    );
  });

  test('what can’t be drawn is refused with its number', () => {
    expect(() => saddleTop(crowns(0).slice(0, 1), 406.4, 0, 73)).toThrow(/two strings/);
    expect(() => saddleTop(crowns(0), 406.4, 0, 50)).toThrow(
      /50 mm is too short for strings that need 55 mm/,
    );
    expect(() => saddleTop([...crowns(0), { x: 5.5, height: 9 }], 406.4, 0, 73)).toThrow(/no arc/);
    const step = [
      { x: -2, height: 5 },
      { x: 2, height: 10 },
    ];
    expect(() => saddleTop(step, 150, 0, 10)).not.toThrow();
    expect(() => saddleTop(step, 3, 0, 10)).toThrow(RangeError);
  });
});
