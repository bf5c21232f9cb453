import { beforeAll, describe, expect, test } from 'vitest';
import type { Curves, Edge } from '../../models/curves/curves.ts';
import type { Chain, Point } from '../../models/curves/segment.ts';
import { arc, line } from '../../models/curves/segment.ts';
import { cut } from '../../models/kernel/booleans.ts';
import type { Kernel } from '../../models/kernel/kernel.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { volumeOf } from '../../models/kernel/measure.ts';
import { type Scope, scoped } from '../../models/kernel/scope.ts';
import { closedPath, face, prism, revolve } from '../../models/kernel/shapes.ts';
import { body } from '../../models/solid/body.ts';
import { disc as round, slab } from '../models/surface/slab.ts';

// Closed forms of elementary solid geometry, derived; the frustum's figure is 301.656 mm³ for 5.6/4.867 × 14 (derived).

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel({ threads: false });
});

const rectangle = (hx: number, hy: number): Chain =>
  closedPath([
    [-hx, -hy],
    [hx, -hy],
    [hx, hy],
    [-hx, hy],
  ] as Point[]);
const box = (scope: Scope, hx: number, hy: number, z0: number, z1: number) =>
  prism(
    kernel,
    scope,
    face(kernel, scope, rectangle(hx, hy), ([x, y]) => [x, y, z0]),
    [0, 0, z1 - z0],
  );
/** A round level block of radius R on a flat glue face. */
const disc = (R: number, thickness: number, edge: Edge): Curves =>
  slab(0, 0, thickness, { outline: round(R), edge });
const volumeOfBody = (curves: Curves) =>
  scoped((scope) => volumeOf(kernel, body(kernel, scope, curves)).volume);
const off = (volume: number, exact: number) => Math.abs(volume / exact - 1);

describe('the kernel agrees with closed forms within 1e-6', () => {
  test('a slab: length · depth · thickness', () => {
    const volume = scoped((scope) => volumeOf(kernel, box(scope, 77.5, 16, 0, 9)).volume);
    expect(off(volume, 155 * 32 * 9)).toBeLessThan(1e-6);
  });

  test('a round slab hollowed by a sphere loses a cap: πh²(3R − h)/3', () => {
    const [r, sphere, thickness] = [20, 7620, 9];
    const h = sphere - Math.sqrt(sphere ** 2 - r ** 2);
    const volume = volumeOfBody({
      ...disc(r, thickness, { kind: 'none' }),
      underside: { shape: 'sphere', radius: sphere },
    });
    const cap = (Math.PI * h * h * (3 * sphere - h)) / 3;
    expect(off(volume, Math.PI * r * r * (thickness + h) - cap)).toBeLessThan(1e-6);
  });

  test('its edge rounded over loses Pappus’s share: 2π(R·r²(1 − π/4) − r³(5/6 − π/4))', () => {
    const [R, r, thickness] = [20, 2.5, 9];
    const volume = volumeOfBody(disc(R, thickness, { kind: 'round', size: r }));
    // the corner outside a quarter circle has the area r²(1 − π/4); its moment about the wall is r³(5/6 − π/4)
    const taken = 2 * Math.PI * (R * r * r * (1 - Math.PI / 4) - r ** 3 * (5 / 6 - Math.PI / 4));
    expect(off(volume, Math.PI * R * R * thickness - taken)).toBeLessThan(1e-6);
  });

  test('its edge chamfered loses a triangle turned: πe²(R − e/3)', () => {
    const [R, e, thickness] = [20, 2.5, 9];
    const volume = volumeOfBody(disc(R, thickness, { kind: 'chamfer', size: e }));
    expect(off(volume, Math.PI * R * R * thickness - Math.PI * e * e * (R - e / 3))).toBeLessThan(1e-6);
  });

  test('a tapered hole takes a frustum: πh(R² + Rr + r²)/3', () => {
    const [wide, narrow, height] = [2.8, 4.867 / 2, 14];
    const taken = scoped((scope) => {
      const block = box(scope, 10, 10, 0, height);
      const half = closedPath([
        [0, 0],
        [narrow, 0],
        [wide, height],
        [0, height],
      ]);
      const cone = revolve(
        kernel,
        scope,
        face(kernel, scope, half, ([r, z]) => [r, 0, z]),
        [0, 0],
      );
      return 400 * height - volumeOf(kernel, cut(kernel, scope, block, [cone])).volume;
    });
    const frustum = (Math.PI * height * (wide ** 2 + wide * narrow + narrow ** 2)) / 3;
    expect(frustum).toBeCloseTo(301.656, 3);
    expect(off(taken, frustum)).toBeLessThan(1e-6);
  });

  test('a stadium slot takes (w·(l − w) + πw²/4)·d', () => {
    const [w, l, d] = [3.2, 74, 5.5];
    const [h, r] = [(l - w) / 2, w / 2];
    const stadium: Chain = [
      line([-h, -r], [h, -r]),
      arc([h, -r], [h, r], [h, 0], 1),
      line([h, r], [-h, r]),
      arc([-h, r], [-h, -r], [-h, 0], 1),
    ];
    const taken = scoped((scope) => {
      const block = box(scope, 50, 20, 0, 9);
      const tool = prism(
        kernel,
        scope,
        face(kernel, scope, stadium, ([x, y]) => [x, y, 9 - d]),
        [0, 0, d + 2],
      );
      return 100 * 40 * 9 - volumeOf(kernel, cut(kernel, scope, block, [tool])).volume;
    });
    expect(off(taken, (w * (l - w) + (Math.PI * w * w) / 4) * d)).toBeLessThan(1e-6);
  });
});
