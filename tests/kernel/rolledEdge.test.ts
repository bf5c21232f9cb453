import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import type { Kernel, Shape } from '../../models/kernel/kernel.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { areaOf, boxOf, volumeOf } from '../../models/kernel/measure.ts';
import { scoped } from '../../models/kernel/scope.ts';
import { body } from '../../models/solid/body.ts';
import { kernelsOwnEdge } from '../../scripts/kernelsOwnEdge.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel({ threads: false });
});

const rounded = readdirSync('public/starters')
  .filter((file) => file !== 'index.json')
  .map((file) => ({
    file,
    curves: acceptDesign(JSON.parse(readFileSync(`public/starters/${file}`, 'utf8'))).curves,
  }))
  .filter(({ curves }) => curves.edge.kind === 'round');

// The kernel's fillet is a program of its own, run on the body without its edge: the reference of this test.
test.each(rounded)('$file: our round-over is what the kernel’s own rolling ball leaves', ({ curves }) => {
  const { ours, kernels } = scoped((scope) => {
    const { edge } = curves;
    if (edge.kind === 'none') throw new Error('not reached');
    const measured = (shape: Shape) => ({
      volume: volumeOf(kernel, shape).volume,
      area: areaOf(kernel, shape),
      box: boxOf(kernel, shape),
    });
    const sharp = body(kernel, scope, { ...curves, edge: { kind: 'none' } });
    return {
      ours: measured(body(kernel, scope, curves)),
      kernels: measured(kernelsOwnEdge(kernel, scope, sharp, curves, edge.size)),
    };
  });
  expect(Math.abs(ours.volume / kernels.volume - 1), 'volume').toBeLessThan(1e-5);
  expect(Math.abs(ours.area / kernels.area - 1), 'area').toBeLessThan(1e-4);
  ours.box.forEach((v, i) => {
    expect(Math.abs(v - (kernels.box[i] as number)), `side ${i} of the box, mm`).toBeLessThan(5e-3);
  });
});
