import { expect, test } from 'vitest';
import { frontSlope } from '../../src/trade/frontSlope.ts';

test('the neck’s angle and the string’s over the frets, by coordinates within a thousandth of a degree', () => {
  // in the glue plane's frame: nut and saddle on the frets' plane of 0.5°, each raised square to it
  const a = Math.PI / 360;
  const place = (along: number, over: number) => [
    along * Math.cos(a) - over * Math.sin(a),
    along * Math.sin(a) + over * Math.cos(a),
  ];
  const [nut, saddle] = [place(0, 0.2414), place(649, 3.9586)];
  const [dx, dz] = [(saddle[0] ?? 0) - (nut[0] ?? 0), (saddle[1] ?? 0) - (nut[1] ?? 0)];
  expect(frontSlope(0.5, 0.2414, 3.9586, 649)).toBeCloseTo((Math.atan2(dz, dx) * 180) / Math.PI, 9);
});

test('a string level with the frets falls as the frets do', () => {
  expect(frontSlope(1.25, 2, 2, 650)).toBe(1.25);
});
