import { expect, test } from 'vitest';
import { pinPlaces } from '../../models/curves/pins.ts';
import { stringPlaces } from '../../models/curves/strings.ts';
import { stringSpread } from '../../src/trade/stringSpread.ts';
import { design } from '../support/change.ts';

test.each(['right', 'left'])(
  '%s-handed: a design’s strings and pins have the spread they were given',
  (hand) => {
    const d = design({
      'guitar.hand': hand,
      'strings.spread': 55,
      'pins.spread': 57,
      'pins.line': 'parallel',
      'saddle.angle': 3,
    });
    const strings = stringSpread(stringPlaces(d).map((x) => [x, 0]));
    const pins = stringSpread(pinPlaces(d));
    expect(strings.overall).toBeCloseTo(55, 9);
    expect(pins.overall).toBeCloseTo(57, 9);
    expect(pins.gaps).toHaveLength(5);
    for (const gap of strings.gaps) expect(gap).toBeCloseTo(11, 9);
    for (const gap of pins.gaps) expect(gap).toBeCloseTo(11.4, 9);
  },
);

test('one place has no spread', () => {
  expect(() => stringSpread([[0, 0]])).toThrow(RangeError);
});
