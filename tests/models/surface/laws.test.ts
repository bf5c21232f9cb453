import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../../models/curves/segment.ts';
import { surfaceFigures } from '../../../models/surface/figures.ts';
import { betweenRounded, gauss, panels } from '../../../models/surface/gauss.ts';
import { partsOf } from '../../../models/surface/parts.ts';
import { section } from '../../../models/surface/section.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { type AcceptedDesign, acceptDesign } from '../../../src/design/acceptDesign.ts';
import type { Group } from '../../../src/design/fields.ts';
import { DesignError } from '../../../src/design/problem.ts';
import { acceptedDesigns } from '../../support/designs.ts';

// Laws that hold for every bridge: derived.

const SEED = 20261125;
const { accepted } = acceptedDesigns(40, SEED);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const holes = ['drilled', 'reamed'] as const;
const patient = { timeout: 60_000 };

/** The design with one field set to something else, if that can be made. */
function changed({ text }: AcceptedDesign, group: Group, fields: Readonly<Record<string, number | string>>) {
  try {
    return acceptDesign({ ...text, [group]: { ...text[group], ...fields } });
  } catch (error) {
    if (error instanceof DesignError) return undefined;
    throw error;
  }
}

/** Radius of a hole's outline at a height, mm. */
function radiusAt(outline: readonly Point[], z: number): number {
  const k = outline.findIndex((p, i) => i > 1 && p[1] >= z);
  const [a, b] = [outline[k - 1] ?? [0, 0], outline[k] ?? [0, 0]];
  return a[0] + ((z - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
}

describe(`over 40 random designs of seed ${SEED}`, patient, () => {
  test('a left-handed bridge is the mirror image of the right-handed one', () => {
    for (const [i, one] of accepted.entries()) {
      const other = changed(one, 'guitar', { hand: one.design.guitar.hand === 'left' ? 'right' : 'left' });
      expect(other, `design ${i} made for the other hand`).toBeDefined();
      if (!other) continue;
      const [a, b] = [surfaceFigures(one.curves, 'reamed'), surfaceFigures(other.curves, 'reamed')];
      expect(b.volumeMm3 / a.volumeMm3, `volume of design ${i}`).toBeCloseTo(1, 7);
      expect(b.centroidMm[0], `centroid of design ${i}`).toBeCloseTo(-a.centroidMm[0], 4);
      const [wood, image] = [surfaceOf(one.curves, 'reamed'), surfaceOf(other.curves, 'reamed')];
      const [x0, y0, , x1, y1] = wood.box;
      fc.assert(
        fc.property(share, share, (s, t) => {
          const [x, y] = [x0 + s * (x1 - x0), y0 + t * (y1 - y0)];
          const [here, there] = [wood.columns(x, y).flat(), image.columns(-x, y).flat()];
          // a figure's last digit may put a place on the other side of a wall
          if (here.length !== there.length) {
            const beside = wood.columns(x + 1e-7, y).length !== wood.columns(x - 1e-7, y).length;
            expect(beside, `design ${i} at (${x}, ${y})`).toBe(true);
            return;
          }
          here.forEach((z, k) => {
            expect(there[k], `design ${i} at (${x}, ${y})`).toBeCloseTo(z, 5);
          });
        }),
        { seed: SEED, numRuns: 60 },
      );
    }
  });

  test('reaming only takes wood', () => {
    for (const [i, { curves }] of accepted.entries()) {
      const [drilled, reamed] = holes.map((h) => surfaceFigures(curves, h).volumeMm3);
      expect(reamed, `volume of design ${i}, reamed`).toBeLessThanOrEqual((drilled ?? 0) + 1e-6);
    }
  });

  test('all wood lies in the box, in stretches that rise and don’t touch', () => {
    for (const { curves } of accepted) {
      const { box, columns } = surfaceOf(curves, 'drilled');
      const [x0, y0, z0, x1, y1, z1] = box;
      fc.assert(
        fc.property(share, share, (s, t) => {
          // a little beyond the box as well
          const [x, y] = [x0 - 2 + s * (x1 - x0 + 4), y0 - 2 + t * (y1 - y0 + 4)];
          const found = columns(x, y).flat();
          if (x < x0 || x > x1 || y < y0 || y > y1) expect(found).toEqual([]);
          found.forEach((z, k) => {
            expect(z).toBeGreaterThanOrEqual(z0 - 1e-9);
            expect(z).toBeLessThanOrEqual(z1 + 1e-9);
            if (k > 0) expect(z).toBeGreaterThan(found[k - 1] ?? 0);
          });
        }),
        { seed: SEED, numRuns: 100 },
      );
    }
  });

  test('a thicker bridge has more wood', () => {
    let compared = 0;
    for (const [i, one] of accepted.entries()) {
      // the slot keeps its depth, or a thicker bridge would have a deeper one
      const { depth } = one.design.saddle;
      const set = changed(one, 'saddle', { depthBy: 'set', depth });
      const thickness = one.design.top.thickness + 0.3;
      const thicker = set && changed(set, 'top', { thicknessBy: 'set', thickness });
      if (!thicker) continue;
      compared++;
      const [a, b] = [one, thicker].map(({ curves }) => surfaceFigures(curves, 'drilled').volumeMm3);
      expect(b, `volume of design ${i}, thicker`).toBeGreaterThan(a ?? 0);
    }
    expect(compared, 'designs that could be made thicker').toBeGreaterThan(15);
  });

  test('the edge’s surface is the height over its places', () => {
    let compared = 0;
    for (const [i, { curves }] of accepted.entries()) {
      const { plan, edge } = partsOf(curves, 'drilled');
      if (!edge) continue;
      for (let k = 0; k < 150; k++) {
        const across = edge.across(((k + 0.37) / 150) * plan.length);
        for (const part of [0.01, 0.2, 0.6, 0.95]) {
          const [x, y, z] = across(part);
          const near = plan.nearest(x, y);
          if (!near || !plan.contains(x, y)) continue;
          compared++;
          expect(edge.height(x, y, near), `design ${i} over (${x}, ${y})`).toBeCloseTo(z, 6);
        }
      }
    }
    expect(compared).toBeGreaterThan(10_000);
  });

  test('sections along x add up to the volume, within 1e-4 of it', () => {
    for (const [i, { curves }] of accepted.slice(0, 3).entries()) {
      const wood = surfaceOf(curves, 'reamed');
      const [x0, , , x1] = wood.box;
      const rims = curves.pins.flatMap((pin) =>
        [0, pin.top].flatMap((z) =>
          [-1, 1].map((side) => pin.at[0] + side * radiusAt(pin.outline.reamed, z)),
        ),
      );
      const stops = panels(x0, x1, [...wood.landmarks().map((p) => p[0]), ...rims]);
      let volume = 0;
      stops.slice(1).forEach((to, k) => {
        betweenRounded(stops[k] ?? x0, to, gauss(6), (x, dx) => {
          volume += section(wood, { across: 'x', at: x }, 2e-3).areaMm2 * dx;
        });
      });
      const { volumeMm3 } = surfaceFigures(curves, 'reamed');
      expect(
        Math.abs(volume / volumeMm3 - 1),
        `design ${i}: ${volume} by sections, ${volumeMm3} by figures`,
      ).toBeLessThan(1e-4);
    }
  });
});
