import { describe, expect, test } from 'vitest';
import type { Pin } from '../../../models/curves/curves.ts';
import { leastBevel, pinPlaces } from '../../../models/curves/pins.ts';
import { drop } from '../../../models/curves/profile.ts';
import { distance } from '../../../models/curves/segment.ts';
import { type Changes, curves, design } from '../../support/change.ts';

const drawn = (changes: Changes): readonly Pin[] => curves(changes).pins;

/** Radius of a hole at a height, read off its outline. */
function radiusAt(pin: Pin, holes: 'drilled' | 'reamed', z: number): number {
  const outline = pin.outline[holes];
  for (let i = 1; i < outline.length; i++) {
    const [a, b] = [outline[i - 1], outline[i]];
    if (a && b && b[1] > a[1] && z >= a[1] && z <= b[1])
      return a[0] + ((z - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
  }
  throw new Error(`the hole doesn't reach ${z}`);
}

describe('the row', () => {
  test('square to the centre line, treble first', () => {
    const d = design({ 'pins.spread': 57, 'pins.behindSlot': 13 });
    expect(pinPlaces(d)).toEqual(
      [28.5, 17.1, 5.7, -5.7, -17.1, -28.5].map((x) => [expect.closeTo(x, 10), -13]),
    );
  });

  test('parallel to the slot: on a line at its angle, as wide along it as asked', () => {
    const d = design({
      'pins.line': 'parallel',
      'pins.spread': 57,
      'saddle.angle': 3,
      'pins.behindSlot': 13,
    });
    const places = pinPlaces(d);
    const [first, last] = [places[0], places[5]];
    if (!first || !last) throw new Error('pins are missing');
    expect(distance(first, last)).toBeCloseTo(57, 10);
    expect((first[1] - last[1]) / (first[0] - last[0])).toBeCloseTo(Math.tan((3 * Math.PI) / 180), 10);
    expect((first[1] + last[1]) / 2).toBeCloseTo(-13, 10);
  });

  test('left-handed it is the mirror image, treble first', () => {
    for (const line of ['square', 'parallel']) {
      const right = pinPlaces(design({ 'pins.line': line }));
      const left = pinPlaces(design({ 'pins.line': line, 'guitar.hand': 'left' }));
      left.forEach(([x, y], i) => {
        expect(x).toBeCloseTo(-(right[i]?.[0] ?? 0), 10);
        expect(y).toBeCloseTo(right[i]?.[1] ?? 0, 10);
      });
    }
  });
});

describe('the reamer’s taper: mouth − depth·2·tan(angle/2)', () => {
  // derived: diameters at 5, 9 and 10 mm below a mouth of 5.60
  test.each([
    [3, [5.3381, 5.1287, 5.0763]],
    [5, [5.1634, 4.8141, 4.7268]],
  ])('%d° from a mouth of 5.60', (taper, diameters) => {
    const changes: Changes = {
      'pins.taper': taper,
      'pins.mouth': 5.6,
      'pins.drill': 2.5,
      'pins.bevel': 'none',
      'top.thickness': 13,
      'top.blend': 15,
    };
    for (const pin of drawn(changes)) {
      [5, 9, 10].forEach((depth, i) => {
        expect(Math.abs(2 * radiusAt(pin, 'reamed', pin.top - depth) - (diameters[i] ?? 0))).toBeLessThan(
          1e-4,
        );
      });
    }
  });

  test('0.1 mm of diameter is 1.909 mm of depth at 3° (derived)', () => {
    const pin = drawn({ 'pins.taper': 3, 'pins.mouth': 5.6, 'pins.bevel': 'none' })[0] as Pin;
    expect(2 * radiusAt(pin, 'reamed', pin.top - 1.909)).toBeCloseTo(5.5, 4);
  });
});

describe('each hole', () => {
  const changes: Changes = {
    'pins.drill': 4.8,
    'pins.taper': 5,
    'pins.mouth': 5.6,
    'pins.bevelDiameter': 6.6,
    'pins.bevelAngle': 90,
  };

  test('stands on the crown over its own x', () => {
    for (const pin of drawn(changes)) expect(pin.top).toBeCloseTo(9.5 - drop(406.4, Math.abs(pin.at[0])), 10);
  });

  test('as drilled is a parallel hole under its bevel', () => {
    for (const pin of drawn(changes)) {
      expect(radiusAt(pin, 'drilled', pin.top)).toBeCloseTo(3.3, 9);
      expect(radiusAt(pin, 'drilled', pin.top - 0.4)).toBeCloseTo(2.9, 9);
      for (const depth of [0.95, 3, 9]) expect(radiusAt(pin, 'drilled', pin.top - depth)).toBeCloseTo(2.4, 9);
    }
  });

  test('as reamed has the same rim, the mouth’s taper below it and the drill below that', () => {
    const slope = Math.tan((2.5 * Math.PI) / 180);
    for (const pin of drawn(changes)) {
      expect(radiusAt(pin, 'reamed', pin.top)).toBeCloseTo(3.3, 9);
      for (const depth of [1, 3, 6])
        expect(radiusAt(pin, 'reamed', pin.top - depth)).toBeCloseTo(2.8 - depth * slope, 9);
      expect(radiusAt(pin, 'reamed', pin.top - 9.3)).toBeCloseTo(2.4, 9);
    }
  });

  test('reaming only ever takes wood', () => {
    for (const pin of drawn(changes)) {
      for (let depth = -0.1; depth < 10; depth += 0.05) {
        const z = pin.top - depth;
        expect(radiusAt(pin, 'reamed', z)).toBeGreaterThanOrEqual(radiusAt(pin, 'drilled', z) - 1e-12);
      }
    }
  });

  test('is a closed half outline that begins and ends on its axis, and clears the wood at both ends', () => {
    for (const pin of drawn(changes)) {
      for (const outline of Object.values(pin.outline)) {
        const [first, last] = [outline[0], outline[outline.length - 1]];
        expect([first?.[0], last?.[0]]).toEqual([0, 0]);
        expect(first?.[1]).toBeLessThan(-1);
        expect(last?.[1]).toBeGreaterThan(pin.top + 0.1);
        const heights = outline.map(([, z]) => z);
        expect(heights).toEqual([...heights].sort((a, b) => a - b));
        for (const [r] of outline.slice(1, -1)) expect(r).toBeGreaterThan(0);
      }
    }
  });

  test('cuts past the highest place where its bevel meets the crown', () => {
    const steep = drawn({
      ...changes,
      'top.crown': 'set',
      'top.crownRadius': 200,
      'top.block': 80,
      'top.blend': 20,
      'top.thickness': 12,
      'pins.spread': 52,
      'saddle.slotLength': 60,
    });
    for (const pin of steep) {
      const lid = pin.outline.reamed[pin.outline.reamed.length - 1]?.[1] ?? 0;
      // toward the centre the crown is higher: walk up it until the bevel's cone passes under it
      for (let r = 0; r < pin.reach; r += 0.01) {
        const surface = 12 - drop(200, Math.max(0, Math.abs(pin.at[0]) - r));
        const cone = pin.top + (r - 3.3);
        if (cone < surface) expect(surface).toBeLessThan(lid);
      }
    }
  });
});

describe('without a bevel or a taper', () => {
  test('taper 0 leaves the hole as drilled, whatever mouth is set', () => {
    for (const pin of drawn({ 'pins.taper': 0, 'pins.mouth': 9 }))
      expect(pin.outline.reamed).toEqual(pin.outline.drilled);
  });
  test('a mouth no wider than the drill leaves it as drilled too', () => {
    for (const pin of drawn({ 'pins.drill': 5, 'pins.mouth': 5, 'pins.taper': 5 })) {
      expect(pin.outline.reamed).toEqual(pin.outline.drilled);
    }
  });
  test('the widest at the surface is what neighbours must keep away from', () => {
    expect(drawn({ 'pins.bevel': 'none', 'pins.mouth': 5.6 })[0]?.reach).toBeCloseTo(2.8, 9);
    expect(drawn({ 'pins.bevel': 'none', 'pins.taper': 0, 'pins.drill': 4.8 })[0]?.reach).toBeCloseTo(2.4, 9);
    expect(drawn({})[0]?.reach).toBeGreaterThan(3.3);
  });
  test('a bevel must be wider than the hole that is reamed through it', () => {
    expect(leastBevel(design({ 'pins.mouth': 5.6, 'pins.drill': 4.8 }))).toBe(5.7);
    expect(leastBevel(design({ 'pins.taper': 0, 'pins.mouth': 9, 'pins.drill': 2.7 }))).toBe(2.8);
  });
});
