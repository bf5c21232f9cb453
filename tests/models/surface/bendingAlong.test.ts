import { describe, expect, test } from 'vitest';
import type { Curves, Holes } from '../../../models/curves/curves.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { type BendingStation, bendingAlong } from '../../../models/surface/bendingAlong.ts';
import { chordsOf } from '../../../models/surface/chords.ts';
import { edgeBites } from '../../../models/surface/edgeBites.ts';
import { surfaceFigures } from '../../../models/surface/figures.ts';
import { facesOf, partsOf } from '../../../models/surface/parts.ts';
import { section } from '../../../models/surface/section.ts';
import { slice } from '../../../models/surface/slice.ts';
import { stretchIntegral } from '../../../models/surface/stretchIntegral.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { STARTER_FILES } from '../../../src/cli/starterFiles.ts';
import { type AcceptedDesign, acceptDesign } from '../../../src/design/acceptDesign.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { disc, hole, level, rounded, slab, slotOf } from './slab.ts';

const along = (curves: Curves, holes: Holes = 'reamed') => bendingAlong(curves, holes).stations;

/** What straight lines between stations say at x. */
function told(stations: readonly BendingStation[], x: number): BendingStation {
  const i = stations.findIndex((s) => s.x >= x);
  const [a, b] = [stations[Math.max(0, i - 1)], stations[i]];
  if (!a || !b) throw new Error(`no stations on both sides of ${x}`);
  const share = b.x === a.x ? 0 : (x - a.x) / (b.x - a.x);
  const mix = (of: (s: BendingStation) => number) => of(a) + share * (of(b) - of(a));
  return {
    x,
    areaMm2: mix((s) => s.areaMm2),
    centroidMm: mix((s) => s.centroidMm),
    secondMm4: mix((s) => s.secondMm4),
  };
}

function expectShare(found: number, exact: number, share: number, what: string): void {
  expect(Math.abs(found / exact - 1), `${what}: ${found} against ${exact}`).toBeLessThan(share);
}

// Second moments of rectangles, bd³/12 and the parallel axis theorem: standard beam formulas.
describe('closed forms', () => {
  test('a prism of 32 × 9 has I = 1944 mm⁴ from tip to tip', () => {
    const stations = along(slab(155, 32, 9));
    expect(stations[0]?.x).toBeCloseTo(-77.5, 5);
    expect(stations[stations.length - 1]?.x).toBeCloseTo(77.5, 5);
    for (const s of stations) {
      expectShare(s.secondMm4, 1944, 1e-9, `I at ${s.x}`);
      expectShare(s.areaMm2, 288, 1e-9, `A at ${s.x}`);
      expect(s.centroidMm).toBeCloseTo(4.5, 9);
    }
  });

  test('a taper has b·t(x)³/12', () => {
    const stations = along(slab(60, 32, 6, { profile: level(6, -0.1) }));
    for (const x of [-29.9, -21.3, -8, 0.1, 13.7, 29.9]) {
      expectShare(told(stations, x).secondMm4, (32 * (6 + 0.1 * x) ** 3) / 12, 1e-3, `I at ${x}`);
    }
  });

  test('a slot leaves two bars joined by the wood under its floor', () => {
    const [width, depth] = [3, 5.5];
    const stations = along(slab(100, 30, 9, { slot: slotOf(width, 70, depth) }));
    const area = 30 * 9 - width * depth;
    const height = (30 * 9 * 4.5 - width * depth * (9 - depth / 2)) / area;
    const second =
      (30 * 9 ** 3) / 12 +
      30 * 9 * (height - 4.5) ** 2 -
      (width * depth ** 3) / 12 -
      width * depth * (9 - depth / 2 - height) ** 2;
    for (const x of [-30, 0, 17.7]) {
      const s = told(stations, x);
      expectShare(s.areaMm2, area, 1e-6, `A at ${x}`);
      expect(s.centroidMm).toBeCloseTo(height, 6);
      expectShare(s.secondMm4, second, 1e-6, `I at ${x}`);
    }
    expectShare(told(stations, 40).secondMm4, (30 * 9 ** 3) / 12, 1e-4, 'I beyond the slot');
  });

  test('a hole right through leaves two bars beside its chord', () => {
    const stations = along(slab(100, 30, 9, { pins: [hole([10, -5], 9, [2.5, -2], [2.5, 10])] }));
    for (const off of [0, 1, -2]) {
      const chord = 2 * Math.sqrt(2.5 ** 2 - off * off);
      expectShare(told(stations, 10 + off).secondMm4, ((30 - chord) * 9 ** 3) / 12, 2e-3, `I ${off} beside`);
    }
  });

  test('a disc’s chords', () => {
    const stations = along(slab(0, 0, 9, { outline: disc(20) }));
    for (const x of [-17, -11, 0.3, 16]) {
      expectShare(told(stations, x).areaMm2, 18 * Math.sqrt(400 - x * x), 2e-3, `A at ${x}`);
    }
  });

  test('a rounded edge takes its two quarter circles’ corners', () => {
    const r = 2;
    const outline = rounded(100, 30, 8);
    const stations = along(slab(0, 0, 9, { outline, edge: { kind: 'round', size: r } }));
    expectShare(told(stations, 5).areaMm2, 30 * 9 - 2 * (1 - Math.PI / 4) * r * r, 1e-4, 'A');
  });

  test('where something ends at once two stations stand a hair apart', () => {
    const slot = slotOf(3, 60, 5, { roundEnds: false });
    const stations = along(slab(100, 30, 9, { slot }));
    for (const end of [-30, 30]) {
      const beside = stations.filter((s) => Math.abs(s.x - end) < 1e-5).map((s) => s.areaMm2);
      expect(Math.min(...beside)).toBeCloseTo(30 * 9 - 15, 6);
      expect(Math.max(...beside)).toBeCloseTo(30 * 9, 6);
    }
  });
});

const starters: readonly (readonly [string, AcceptedDesign])[] = STARTER_FILES.map(({ name, json }) => [
  name,
  acceptDesign(json),
]);
const random: readonly (readonly [string, AcceptedDesign])[] = acceptedDesigns(15, 20261125).accepted.map(
  (accepted, i) => [`random design ${i}`, accepted],
);

describe.each([...starters, ...random])('%s', (name, { curves }) => {
  const holes: Holes = name.length % 2 === 0 ? 'drilled' : 'reamed';
  const stations = along(curves, holes);

  test('x rises, and wood is at every station', () => {
    stations.forEach((s, i) => {
      if (i > 0) expect(s.x, `station ${i}`).toBeGreaterThan(stations[i - 1]?.x ?? 0);
      expect(s.areaMm2, `A at ${s.x}`).toBeGreaterThan(0);
      expect(s.secondMm4, `I at ${s.x}`).toBeGreaterThan(0);
    });
  });

  test('areas add up to the volume within 1e-3', () => {
    let volume = 0;
    stations.slice(1).forEach((b, i) => {
      const a = stations[i] ?? b;
      volume += ((a.areaMm2 + b.areaMm2) / 2) * (b.x - a.x);
    });
    expectShare(volume, surfaceFigures(curves, holes).volumeMm3, 1e-3, 'volume');
  });

  test('stations are the accurate sections, by their polygons', () => {
    const wood = surfaceOf(curves, holes);
    const step = Math.ceil(stations.length / 7);
    for (let i = 4; i < stations.length - 4; i += step) {
      const s = stations[i] as BendingStation;
      const exact = polygonMoments(
        section(wood, { across: 'x', at: s.x }, 0.001).pieces.flatMap((p) => [p.outer, ...p.holes]),
      );
      expectShare(s.areaMm2, exact.area, 2e-3, `A at ${s.x}`);
      expect(Math.abs(s.centroidMm - exact.height), `centroid at ${s.x}`).toBeLessThan(0.01);
      expectShare(s.secondMm4, exact.second, 3e-3, `I at ${s.x}`);
    }
  });

  test('refining changes neither ∫1/I nor ∫x²/I by a thousandth', () => {
    const parts = partsOf(curves, holes);
    const chords = chordsOf(curves.outline);
    const bites = edgeBites(curves);
    const faces = facesOf(parts);
    const fine = stations.slice(1).flatMap((b, i) => {
      const a = stations[i] ?? b;
      const between = b.x - a.x < 1e-4 ? [] : [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875];
      const made = between.map((share) => {
        const x = a.x + share * (b.x - a.x);
        return slice(parts, faces, chords(x), bites(x));
      });
      return [...made, b];
    });
    // the last of a tip has next to no stiffness, and no load ever bends it
    const tip = 0.97 * (stations[stations.length - 1]?.x ?? 0);
    for (const f of [() => 1, (x: number) => (tip - Math.abs(x)) ** 2]) {
      const sum = (all: readonly BendingLike[]) =>
        stretchIntegral(
          all,
          (s) => s.secondMm4,
          [-tip, tip],
          [0],
          (x, second) => f(x) / second,
        );
      expectShare(sum(stations), sum([...stations.slice(0, 1), ...fine]), 1e-3, 'integral');
    }
  });
});

type BendingLike = Pick<BendingStation, 'x' | 'secondMm4'>;

/** Area, centroid's height and second moment about it of closed polygons in (y, z), by Green’s theorem. */
function polygonMoments(polygons: readonly (readonly Point[])[]) {
  let [area, first, second] = [0, 0, 0];
  for (const polygon of polygons) {
    polygon.forEach((a, i) => {
      const b = polygon[(i + 1) % polygon.length] ?? a;
      const cross = a[0] * b[1] - b[0] * a[1];
      area += cross / 2;
      first += (cross * (a[1] + b[1])) / 6;
      second += (cross * (a[1] * a[1] + a[1] * b[1] + b[1] * b[1])) / 12;
    });
  }
  const height = first / area;
  return { area, height, second: second - first * height };
}
