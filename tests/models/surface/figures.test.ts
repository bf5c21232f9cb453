import { describe, expect, test } from 'vitest';
import type { Curves } from '../../../models/curves/curves.ts';
import { massG, surfaceFigures } from '../../../models/surface/figures.ts';
import { disc, hole, level, rounded, slab, slotOf } from './slab.ts';

// Closed forms of elementary solid geometry, derived; those with a source say so.

const degrees = Math.PI / 180;
const figures = (curves: Curves) => surfaceFigures(curves, 'reamed');
/** What is missing from the plain block, mm³. */
const taken = (rest: Partial<Curves>) =>
  figures(slab(100, 30, 14)).volumeMm3 - figures(slab(100, 30, 14, rest)).volumeMm3;
function expectShare(found: number, exact: number, share: number): void {
  expect(Math.abs(found / exact - 1), `${found} against ${exact} in closed form`).toBeLessThan(share);
}

describe('the body', () => {
  test('a block: volume, box and centroid', () => {
    const { volumeMm3, boxMm, centroidMm } = figures(slab(155, 32, 9));
    expectShare(volumeMm3, 155 * 32 * 9, 1e-12);
    expect(boxMm).toEqual([-77.5, -16, 0, 77.5, 16, 9]);
    [0, 0, 4.5].forEach((c, i) => {
      expect(centroidMm[i]).toBeCloseTo(c, 9);
    });
  });

  test('a round-cornered block that lies off the origin', () => {
    const outline = rounded(60, 30, 7).map((s) => {
      const by = ([x, y]: readonly [number, number]) => [x + 11, y - 5] as const;
      return s.kind === 'line'
        ? { ...s, from: by(s.from), to: by(s.to) }
        : { ...s, from: by(s.from), to: by(s.to), centre: by(s.centre) };
    });
    const { volumeMm3, centroidMm } = figures(slab(0, 0, 9, { outline }));
    expectShare(volumeMm3, (60 * 30 - (4 - Math.PI) * 49) * 9, 1e-10);
    [11, -5, 4.5].forEach((c, i) => {
      expect(centroidMm[i]).toBeCloseTo(c, 8);
    });
  });

  test('a top that falls along x: the middle height over the area, and Σx² for the centroid', () => {
    const { volumeMm3, centroidMm, boxMm } = figures(slab(60, 30, 9, { profile: level(9, 0.1) }));
    expectShare(volumeMm3, 60 * 30 * 9, 1e-12);
    expect(centroidMm[0]).toBeCloseTo((-0.1 * 60 ** 2) / 12 / 9, 9);
    expect(boxMm[5]).toBeCloseTo(12, 12);
  });

  test.each([60, 7620])('a round block hollowed by a sphere of R %d loses a cap, πh²(3R − h)/3', (R) => {
    const r = 20;
    const h = R - Math.sqrt(R * R - r * r);
    const cap = (Math.PI * h * h * (3 * R - h)) / 3;
    const { volumeMm3, boxMm } = figures(
      slab(0, 0, 9, { outline: disc(r), underside: { shape: 'sphere', radius: R } }),
    );
    expectShare(volumeMm3, Math.PI * r * r * (9 + h) - cap, 1e-9);
    expect(boxMm[2]).toBeCloseTo(-h, 9);
  });

  test('a block hollowed by a cylinder of R 100 along y loses a circle’s segment', () => {
    const [R, half] = [100, 30];
    const h = R - Math.sqrt(R * R - half * half);
    const segment = R * R * Math.asin(half / R) - half * (R - h);
    const { volumeMm3 } = figures(slab(60, 30, 9, { underside: { shape: 'cylinder', radius: R } }));
    expectShare(volumeMm3, 30 * (60 * (9 + h) - segment), 1e-9);
  });
});

describe('the edge all round a block with round corners', () => {
  const [length, depth, corner, size] = [100, 30, 8, 2];
  const straights = 2 * (length + depth - 4 * corner);
  const bite = (kind: 'round' | 'chamfer') => {
    const outline = rounded(length, depth, corner);
    const plain = figures(slab(0, 0, 9, { outline })).volumeMm3;
    return plain - figures(slab(0, 0, 9, { outline, edge: { kind, size } })).volumeMm3;
  };

  test('a round-over takes (1 − π/4)r² a mm, and round the corners as Pappus says', () => {
    // centroid of what is between a quarter circle and its square: r(10 − 3π)/(12 − 3π) from the sides
    const inward = (size * (10 - 3 * Math.PI)) / (12 - 3 * Math.PI);
    const area = (1 - Math.PI / 4) * size ** 2;
    expectShare(bite('round'), area * (straights + 2 * Math.PI * (corner - inward)), 1e-6);
  });

  test('a chamfer takes e²/2 a mm, and a cone’s share round the corners', () => {
    expectShare(bite('chamfer'), (size ** 2 / 2) * (straights + 2 * Math.PI * (corner - size / 3)), 1e-6);
  });

  test.each([
    ['round', 1 - Math.PI / 4],
    ['chamfer', 1 / 2],
  ] as const)('%s under a sloping top takes the same for each mm of the edge itself', (kind, share) => {
    const volume = (long: number, edge: Curves['edge']) =>
      figures(slab(0, 0, 20, { outline: rounded(long, 30, 8), profile: level(20, 0.2), edge })).volumeMm3;
    const lost = (long: number) => volume(long, { kind: 'none' }) - volume(long, { kind, size });
    // both walls, per mm of x times the slant
    expectShare(lost(90) - lost(60), 2 * 30 * Math.hypot(1, 0.2) * share * size ** 2, 1e-6);
  });
});

describe('the slot', () => {
  const stadium = (width: number, length: number) => (length - width) * width + (Math.PI * width ** 2) / 4;

  test('a round-ended slot takes its stadium times its depth, whatever its angle', () => {
    for (const angle of [0, 3, -7]) {
      const slot = slotOf(3.2, 74, 5.5, { angle: angle * degrees });
      expectShare(taken({ slot }), stadium(3.2, 74) * 5.5, 1e-8);
    }
  });

  test('tilted, it takes as much: what the opening loses on one side it gains on the other', () => {
    for (const tilt of [0.5, 5, 12]) {
      const slot = slotOf(3.2, 74, 5.5, { tilt: tilt * degrees, angle: 2 * degrees });
      expectShare(taken({ slot }), stadium(3.2, 74) * 5.5, 1e-6);
    }
  });

  test('open through a block with its floor in an arc: a circle’s segment more', () => {
    const R = 400;
    const slot = slotOf(3, 100, 5.5, { roundEnds: false, floorRadius: R });
    const sag = R - Math.sqrt(R * R - 50 * 50);
    const segment = R * R * Math.asin(50 / R) - 50 * (R - sag);
    expectShare(taken({ slot }), 3 * (100 * (5.5 + sag) - segment), 1e-6);
  });
});

describe('holes', () => {
  test('a tapered hole takes a frustum: 301.656 mm³ for 5.6/4.867 × 14', () => {
    // πh(R² + Rr + r²)/3; the table of reamed holes in the project's trade notes, derived there by another program
    const slope = (2.8 - 4.867 / 2) / 14;
    const pins = [hole([12, 3], 14, [4.867 / 2 - 2 * slope, -2], [2.8 + slope, 15])];
    expect(Math.abs(taken({ pins }) - 301.656)).toBeLessThan(5e-4);
  });

  test('a bevelled hole takes a cylinder and a frustum', () => {
    const pins = [hole([-20, 1], 14, [2.4, -2], [2.4, 13.1], [3.3, 14], [3.8, 14.5])];
    const cone = (Math.PI * 0.9 * (3.3 ** 2 + 3.3 * 2.4 + 2.4 ** 2)) / 3;
    expectShare(taken({ pins }), Math.PI * 2.4 ** 2 * 13.1 + cone, 1e-8);
  });

  test('a channel takes a wedge beyond its hole, and nothing twice', () => {
    const [r, width, long, deep] = [2.4, 1.6, 8, 2];
    const pins = [hole([5, -2], 14, [r, -2], [r, 15])];
    const channels: Curves['channels'] = [
      {
        at: [5, -2],
        direction: [0.6, 0.8],
        width,
        outline: [
          [0, 14 - deep],
          [1.25 * long, 14 + 0.25 * deep],
          [1.25 * long, 16],
          [0, 16],
        ],
        reach: 1.25 * long,
        ends: long,
      },
    ];
    // ∫ from √(r² − t²) to the length of deep·(1 − s/long) ds, over t across: by ∫√(r² − t²) dt
    const h = width / 2;
    const chord = h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r);
    const wedge = (deep / (2 * long)) * (width * (long ** 2 + r * r - (h * h) / 3) - 2 * long * chord);
    expectShare(taken({ pins, channels }) - taken({ pins }), wedge, 1e-6);
  });
});

test('the centroid moves away from what is taken', () => {
  const curves = slab(100, 30, 14, { pins: [hole([20, 5], 14, [3, -2], [3, 15])] });
  const { centroidMm, volumeMm3 } = figures(curves);
  const lost = Math.PI * 9 * 14;
  expect(centroidMm[0]).toBeCloseTo((-20 * lost) / volumeMm3, 8);
  expect(centroidMm[1]).toBeCloseTo((-5 * lost) / volumeMm3, 8);
  expect(centroidMm[2]).toBeCloseTo(7, 8);
});

test('mass is volume times density: 31.0 cm³ weigh 26.32 g at 849 kg/m³', () => {
  // the project's trade notes, derived there
  expect(massG(31_000, 849)).toBeCloseTo(26.32, 2);
});
