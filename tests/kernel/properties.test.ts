import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import type { Holes } from '../../models/curves/curves.ts';
import { createDrafter } from '../../models/draft/draftMesh.ts';
import type { Kernel } from '../../models/kernel/kernel.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { inertiaAbout, volumeOf } from '../../models/kernel/measure.ts';
import type { Vector } from '../../models/kernel/vectors.ts';
import { type BridgeBuilder, createBridgeBuilder } from '../../models/solid/bridge.ts';
import { massProperties } from '../../models/surface/massProperties.ts';
import { type AcceptedDesign, acceptDesign } from '../../src/design/acceptDesign.ts';
import { acceptedDesigns } from '../support/designs.ts';

/** Random designs tried here; PROPERTIES_COUNT in the environment asks for more. */
const COUNT = Number(process.env.PROPERTIES_COUNT ?? 4);
const SEED = 20261125;
/** Share by which surface and solid may differ: of the volume, of the trace for the tensor. */
const SHARE = 1e-3;
/** How far their centroids may lie apart, mm. */
const APART = 0.01;

let kernel: Kernel;
let builder: BridgeBuilder;
beforeAll(async () => {
  kernel = await loadKernel({ threads: false });
  const drafter = await createDrafter();
  builder = createBridgeBuilder(kernel, (curves, holes) => drafter.draft(curves, holes).volumeMm3);
});

/** The part's axes, and those halfway between two of them. */
const DIRECTIONS: readonly Vector[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [1, 1, 0],
  [1, 0, 1],
  [0, 1, 1],
];

interface Apart {
  readonly volume: number;
  readonly centroid: number;
  readonly inertia: number;
}

/** How far the surface's figures lie from the kernel's own, which share nothing with them but the curves and the rim. */
async function apart({ curves }: AcceptedDesign, holes: Holes): Promise<Apart> {
  const { shape } = await builder.build(curves, holes);
  const solid = volumeOf(kernel, shape);
  const about = inertiaAbout(kernel, shape, DIRECTIONS);
  const found = massProperties(curves, holes);
  const { xx, yy, zz, xy, xz, yz } = found.inertiaMm5;
  // u·I·u for each direction u: as many as the tensor has figures
  const own = [xx, yy, zz, (xx + yy) / 2 + xy, (xx + zz) / 2 + xz, (yy + zz) / 2 + yz];
  return {
    volume: Math.abs(found.volumeMm3 / solid.volume - 1),
    centroid: Math.hypot(...found.centroidMm.map((c, k) => c - (solid.centroid[k] as number))),
    inertia: Math.max(...own.map((a, k) => Math.abs(a - (about[k] as number)))) / (xx + yy + zz),
  };
}

function expectNear(off: Apart, what: string): void {
  expect(off.volume, `${what}: volume`).toBeLessThan(SHARE);
  expect(off.centroid, `${what}: centroid, mm apart`).toBeLessThan(APART);
  expect(off.inertia, `${what}: inertia, share of the trace`).toBeLessThan(SHARE);
}

const folder = 'public/starters';
const starters = existsSync(folder) ? readdirSync(folder).filter((f) => f !== 'index.json') : [];

test.each(starters)('mass properties of the starter %s are the kernel’s own', async (file) => {
  const accepted = acceptDesign(JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')));
  expectNear(await apart(accepted, 'drilled'), `${file}, drilled`);
  expectNear(await apart(accepted, 'reamed'), `${file}, reamed`);
});

test(
  `mass properties of ${COUNT} random designs are the kernel’s own`,
  async () => {
    for (const [i, accepted] of acceptedDesigns(COUNT, SEED).accepted.entries()) {
      expectNear(
        await apart(accepted, i % 2 === 0 ? 'drilled' : 'reamed'),
        `random design ${i} of seed ${SEED}`,
      );
    }
  },
  30_000 * COUNT + 60_000,
);
