import { beforeAll, expect, test } from 'vitest';
import { curvesBox } from '../../../models/curves/curvesBox.ts';
import { createDrafter, type Drafter } from '../../../models/draft/draftMesh.ts';
import type { PartMesh } from '../../../models/mesh/partMesh.ts';
import { surfaceFigures } from '../../../models/surface/figures.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import type { AcceptedDesign } from '../../../src/design/acceptDesign.ts';
import { closedMesh } from '../../support/closedMesh.ts';
import { acceptedDesigns } from '../../support/designs.ts';

const { accepted } = acceptedDesigns(40, 2024);
const holesOf = (i: number) => (i % 2 === 0 ? 'reamed' : 'drilled');
const said = (one: AcceptedDesign, i: number) => `design ${i} of seed 2024: ${JSON.stringify(one.design)}`;

/** For a machine that does much else at once, ms. */
const SLOW = 120_000;

let drafter: Drafter;
beforeAll(async () => {
  drafter = await createDrafter();
});

test('any design’s draft is one closed piece with a hole a pin, in the curves’ box', {
  timeout: SLOW,
}, () => {
  accepted.forEach((one, i) => {
    const { mesh, boxMm, throughHoles } = drafter.draft(one.curves, holesOf(i));
    const { openSides, pieces, genus } = closedMesh(mesh);
    const pins = one.curves.pins.length;
    expect({ openSides, pieces, genus, throughHoles }, said(one, i)).toEqual({
      openSides: 0,
      pieces: 1,
      genus: pins,
      throughHoles: pins,
    });
    curvesBox(one.curves).forEach((side, k) => {
      expect(Math.abs((boxMm[k] as number) - side), said(one, i)).toBeLessThan(2e-3);
    });
  });
});

test('its volume is the surface’s within 0.11 %, and within 0.02 % when it is made ten times as fine', {
  timeout: SLOW,
}, () => {
  accepted.forEach((one, i) => {
    const exact = surfaceFigures(one.curves, holesOf(i)).volumeMm3;
    for (const [deviation, share] of [
      [0.02, 1.1e-3],
      [0.002, 2e-4],
    ] as const) {
      const { volumeMm3 } = drafter.draft(one.curves, holesOf(i), deviation);
      expect(Math.abs(volumeMm3 / exact - 1), `at ${deviation} mm, ${said(one, i)}`).toBeLessThan(share);
    }
  });
});

test('its normals are of length 1 and lie within 30° of their triangles', { timeout: SLOW }, () => {
  accepted.forEach((one, i) => {
    const { mesh } = drafter.draft(one.curves, holesOf(i));
    let longest = 0;
    let widest = 0;
    for (const { unit, corners, thin } of triangles(mesh)) {
      for (const n of corners) {
        longest = Math.max(longest, Math.abs(Math.hypot(...n) - 1));
        if (!thin) widest = Math.max(widest, Math.acos(Math.min(1, dot(n, unit))));
      }
    }
    expect(longest, said(one, i)).toBeLessThan(1e-5);
    expect((widest * 180) / Math.PI, said(one, i)).toBeLessThan(30);
  });
});

test('its faces stray from the wood’s by no more than chords both ways do', { timeout: SLOW }, () => {
  const deviation = 0.02;
  accepted.slice(0, 20).forEach((one, i) => {
    const { columns } = surfaceOf(one.curves, holesOf(i));
    let worst = 0;
    let compared = 0;
    for (const { unit, middle, thin, area } of triangles(
      drafter.draft(one.curves, holesOf(i), deviation).mesh,
    )) {
      // a wall has no height, and a sliver along a hole's polygon may lie beside the wood
      if (thin || area < 0.05 || Math.abs(unit[2]) < 0.3) continue;
      const [x, y, z] = middle;
      const away = Math.min(
        ...columns(x, y)
          .flat()
          .map((face) => Math.abs(face - z)),
      );
      worst = Math.max(worst, away * Math.abs(unit[2]));
      compared++;
    }
    expect(compared).toBeGreaterThan(200);
    expect(worst, said(one, i)).toBeLessThan(2 * deviation);
  });
});

type Triple = readonly [number, number, number];

const dot = (a: Triple, b: Triple) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Each triangle's own unit normal, its middle, its corners' normals, and whether it is too thin to have a direction. */
function* triangles({ positions, normals, triangles: t }: PartMesh) {
  const at = (list: Float32Array, v: number): Triple => [
    list[3 * v] as number,
    list[3 * v + 1] as number,
    list[3 * v + 2] as number,
  ];
  for (let k = 0; k < t.length; k += 3) {
    const v = [t[k], t[k + 1], t[k + 2]] as [number, number, number];
    const [a, b, c] = v.map((one) => at(positions, one)) as [Triple, Triple, Triple];
    const u = b.map((q, i) => q - (a[i] as number)) as unknown as Triple;
    const w = c.map((q, i) => q - (a[i] as number)) as unknown as Triple;
    const n: Triple = [u[1] * w[2] - u[2] * w[1], u[2] * w[0] - u[0] * w[2], u[0] * w[1] - u[1] * w[0]];
    const length = Math.hypot(...n);
    yield {
      unit: [n[0] / length, n[1] / length, n[2] / length] as Triple,
      middle: [0, 1, 2].map(
        (i) => ((a[i] as number) + (b[i] as number) + (c[i] as number)) / 3,
      ) as unknown as Triple,
      corners: v.map((one) => at(normals, one)),
      area: length / 2,
      thin: length < 2e-4 * Math.max(Math.hypot(...u), Math.hypot(...w)),
    };
  }
}
