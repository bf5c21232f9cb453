import { describe, expect, test } from 'vitest';
import { chainLength, distanceTo, enclosedArea, isInside, polygon } from '../../../models/curves/chain.ts';
import { levels, outline } from '../../../models/curves/outline.ts';
import { type Chain, distance, nearestOn, type Point } from '../../../models/curves/segment.ts';
import { type Changes, design } from '../../support/change.ts';

/** The outline of the design of all defaults with changes of its footprint. */
function drawn(changes: Readonly<Record<string, unknown>>): Chain {
  const named: Changes = Object.fromEntries(
    Object.entries(changes).map(([key, value]) => [`footprint.${key}`, value]),
  );
  return outline(design(named).footprint);
}

/** Area of a circle's segment: radius R, chord 2c: R²·asin(c/R) − c·√(R² − c²). */
const bowSegment = (radius: number, c: number) =>
  radius ** 2 * Math.asin(c / radius) - c * Math.sqrt(radius ** 2 - c ** 2);
/** What a rounded right angle of radius r takes away. */
const corner = (r: number) => (1 - Math.PI / 4) * r * r;

const plain = {
  length: 160,
  depthCentre: 36,
  tip: 'square',
  cornerFront: 5,
  cornerBack: 8,
  frontEdge: 'straight',
};
const square = corner(5) * 2 + corner(8) * 2;

describe('the area is that of geometry (derived)', () => {
  test('rectangle with rounded corners: L·W − (4 − π)r²', () => {
    const chain = drawn({ ...plain, backEdge: 'straight', cornerBack: 5 });
    expect(enclosedArea(chain)).toBeCloseTo(160 * 36 - (4 - Math.PI) * 25, 9);
    expect(chainLength(chain)).toBeCloseTo(2 * (160 + 36) - (8 - 2 * Math.PI) * 5, 9);
  });

  test('belly in a double sweep: the sweeps take half of what they cross', () => {
    const shape = {
      ...plain,
      depthWing: 27,
      backEdge: 'tail',
      backForm: 'sweep',
      fullDepthLength: 50,
      sweepLength: 34,
    };
    expect(enclosedArea(drawn(shape))).toBeCloseTo(160 * 27 + 9 * (50 + 34) - square, 9);
  });

  test('drawn in by a double sweep: as much less', () => {
    const shape = {
      ...plain,
      depthWing: 42,
      backEdge: 'soundhole',
      backForm: 'sweep',
      fullDepthLength: 50,
      sweepLength: 34,
    };
    expect(enclosedArea(drawn(shape))).toBeCloseTo(160 * 42 - 6 * (50 + 34) - square, 9);
  });

  test('one bow toward the soundhole: a rectangle and a circle’s segment', () => {
    const shape = {
      ...plain,
      depthWing: 31,
      backEdge: 'straight',
      frontEdge: 'soundhole',
      frontForm: 'bow',
      cornerBack: 5,
    };
    const chain = drawn({ ...shape, cornerFront: 1 });
    const radius = (80 * 80 + 25) / 10;
    // the front corners stand at an angle that is not right: their radius is small, so that this hardly counts
    const expected = 160 * 31 + bowSegment(radius, 80) - 2 * corner(5);
    expect(expected - enclosedArea(chain)).toBeGreaterThan(0);
    expect(expected - enclosedArea(chain)).toBeLessThan(2 * 1.2 * corner(1));
  });

  test('half-round tips on straight edges: a stadium', () => {
    const chain = drawn({ ...plain, backEdge: 'straight', tip: 'round' });
    expect(enclosedArea(chain)).toBeCloseTo((160 - 36) * 36 + Math.PI * 18 * 18, 6);
  });

  test('bowed tips: a rectangle and two circle’s segments, less the corners', () => {
    const chain = drawn({
      ...plain,
      backEdge: 'straight',
      tip: 'bowed',
      tipBow: 2,
      cornerFront: 1,
      cornerBack: 1,
    });
    const radius = (18 * 18 + 4) / 4;
    const expected = 156 * 36 + 2 * bowSegment(radius, 18);
    expect(expected - enclosedArea(chain)).toBeGreaterThan(0);
    expect(expected - enclosedArea(chain)).toBeLessThan(4 * corner(1));
  });

  test('a fine polygon has the same area', () => {
    for (const chain of [
      drawn({}),
      drawn({ tip: 'round' }),
      drawn({ ...plain, backForm: 'taper', backEdge: 'tail', knee: 30 }),
    ]) {
      const corners = polygon(chain, 1e-5);
      const area = corners.reduce((sum, [x, y], i) => {
        const [u, v] = corners[(i + 1) % corners.length] as Point;
        return sum + (x * v - u * y) / 2;
      }, 0);
      expect(Math.abs(area - enclosedArea(chain))).toBeLessThan(400 * 1e-5);
    }
  });
});

describe('the depths lie where the drawing says', () => {
  test.each<[string, Readonly<Record<string, unknown>>, readonly number[]]>([
    ['both straight', { backEdge: 'straight', frontEdge: 'straight' }, [11, 11, -25, -25]],
    ['belly to the tail', { backEdge: 'tail', frontEdge: 'straight' }, [11, 11, -25, -16]],
    ['belly to the soundhole', { backEdge: 'straight', frontEdge: 'soundhole' }, [11, 2, -25, -25]],
    ['back drawn in', { backEdge: 'soundhole', frontEdge: 'straight', depthWing: 42 }, [11, 11, -25, -31]],
    ['front drawn in', { backEdge: 'straight', frontEdge: 'tail', depthWing: 42 }, [11, 17, -25, -25]],
    ['both swell', { backEdge: 'tail', frontEdge: 'soundhole', frontBelly: 3 }, [11, 8, -25, -19]],
    ['waist', { backEdge: 'soundhole', frontEdge: 'tail', frontBelly: 3, depthWing: 42 }, [11, 14, -25, -28]],
    ['both toward the tail', { backEdge: 'tail', frontEdge: 'tail', frontBelly: 3 }, [11, 14, -25, -13]],
  ])('%s', (_name, changes, [frontMiddle, frontWing, backMiddle, backWing]) => {
    const shape = { depthCentre: 36, depthWing: 27, slotBehindFront: 11, ...changes };
    const named = Object.fromEntries(
      Object.entries(shape).map(([key, value]) => [`footprint.${key}`, value]),
    );
    expect(levels(design(named).footprint)).toEqual({ frontMiddle, frontWing, backMiddle, backWing });
  });
});

/** The families of shapes that a builder would tell apart, and what makes each. */
const FAMILIES: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  'plain rectangle with rounded corners': { backEdge: 'straight', frontEdge: 'straight', tip: 'square' },
  'belly toward the tail, in a double sweep': { backEdge: 'tail', backForm: 'sweep' },
  'belly toward the soundhole': { backEdge: 'straight', frontEdge: 'soundhole', frontForm: 'sweep' },
  'bowed back': { backEdge: 'tail', backForm: 'bow' },
  'tapered, pointed wings': {
    backEdge: 'tail',
    backForm: 'taper',
    frontEdge: 'soundhole',
    frontForm: 'taper',
    frontBelly: 8,
    depthWing: 14,
    tip: 'square',
    cornerFront: 4,
    cornerBack: 4,
  },
  'drawn in to a waist': {
    backEdge: 'soundhole',
    backForm: 'bow',
    frontEdge: 'tail',
    frontForm: 'bow',
    frontBelly: 2,
    depthWing: 41,
  },
  'half-round ends': { backEdge: 'straight', frontEdge: 'straight', tip: 'round' },
  'moved as a whole toward the tail': {
    backEdge: 'tail',
    frontEdge: 'tail',
    frontBelly: 3,
    frontForm: 'sweep',
  },
};

describe.each(Object.entries(FAMILIES))('%s', (_name, changes) => {
  const chain = drawn(changes);
  const { footprint } = design(
    Object.fromEntries(Object.entries(changes).map(([k, v]) => [`footprint.${k}`, v])),
  );

  test('is closed, of pieces that follow one another', () => {
    chain.forEach((s, i) => {
      const next = chain[(i + 1) % chain.length];
      expect(next && distance(s.to, next.from)).toBeLessThan(1e-9);
    });
  });

  test('has the length and the depth on the centre line that it was given', () => {
    const points = polygon(chain, 1e-4);
    expect(Math.max(...points.map(([x]) => x))).toBeCloseTo(footprint.length / 2, 3);
    expect(Math.min(...points.map(([x]) => x))).toBeCloseTo(-footprint.length / 2, 3);
    const [front, back] = [footprint.slotBehindFront, footprint.slotBehindFront - footprint.depthCentre];
    for (const [y, inside] of [
      [front - 1e-6, true],
      [front + 1e-6, false],
      [back + 1e-6, true],
      [back - 1e-6, false],
    ] as const) {
      expect(isInside(chain, [0, y]), `(0, ${y})`).toBe(inside);
    }
  });

  test('is its own mirror image', () => {
    for (const [x, y] of polygon(chain, 0.05)) {
      const away = Math.min(...chain.map((s) => nearestOn(s, [-x, y]).distance));
      expect(away).toBeLessThan(1e-9);
    }
  });
});

test('no two families are the same outline, nor nearly: somewhere they are a millimetre apart', () => {
  const drawings = Object.values(FAMILIES).map(drawn);
  drawings.forEach((one, i) => {
    for (const other of drawings.slice(i + 1)) {
      const apart = Math.max(...polygon(one, 0.05).map((p) => distanceTo(other, p)));
      expect(apart).toBeGreaterThan(1);
    }
  });
});

test('a bowed tip on a sloping wing ends the bridge at its length, small corners and all', () => {
  for (const radius of [1, 4, 8]) {
    const chain = drawn({
      backForm: 'taper',
      fullDepthLength: 40,
      tipBow: 6,
      cornerFront: radius,
      cornerBack: radius,
      depthWing: 25,
    });
    expect(Math.max(...polygon(chain, 1e-4).map(([x]) => x))).toBeCloseTo(76.5, 3);
  }
});
