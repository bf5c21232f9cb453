import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Holes } from '../../models/curves/curves.ts';
import { heapBytes } from '../../models/kernel/kernel.ts';
import { Scope } from '../../models/kernel/scope.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { draftHeightLimit, type Roadside, roadside } from '../support/roads.ts';

/** Designs tried here; `npm run roads` tries 500. */
const COUNT = 20;
const SEED = 20261125;

let side: Roadside;
beforeAll(async () => {
  side = await roadside();
});

const BOTH: readonly Holes[] = ['drilled', 'reamed'];

async function agree(
  accepted: ReturnType<typeof acceptDesign>,
  name: string,
  ways: readonly Holes[],
): Promise<void> {
  for (const holes of ways) {
    const off = await side.compare(accepted, holes);
    const what = `${name} as ${holes}`;
    expect(Math.abs(off.draftOff), `${what}: volume of the draft against the solid's`).toBeLessThan(5e-4);
    expect(Math.abs(off.surfaceOff), `${what}: volume of the surface against the solid's`).toBeLessThan(5e-4);
    expect(off.heights, `${what}: heights compared`).toBeGreaterThan(100);
    expect(off.heightOff, `${what}: heights of the surface against the solid's, mm`).toBeLessThan(0.01);
    expect(off.draftHeightOff, `${what}: heights of the draft against the solid's, mm`).toBeLessThan(
      draftHeightLimit(accepted.curves),
    );
  }
}

describe('solid, draft and surface are one part', () => {
  const folder = 'public/starters';
  const starters = existsSync(folder) ? readdirSync(folder).filter((f) => f !== 'index.json') : [];
  test.each(starters)('starter %s', async (file) => {
    await agree(acceptDesign(JSON.parse(readFileSync(`${folder}/${file}`, 'utf8'))), file, BOTH);
  });

  test(`${COUNT} random designs build, pass the gate and agree`, async () => {
    const refused: string[] = [];
    for (const [i, accepted] of acceptedDesigns(COUNT, SEED).accepted.entries()) {
      try {
        // one way of holes each, in turn: the script does both
        await agree(accepted, `random design ${i} of seed ${SEED}`, [BOTH[i % 2] as Holes]);
      } catch (error) {
        refused.push(String(error));
      }
    }
    expect(refused).toEqual([]);
  }, 900_000);
});

test('rebuilds leave no handle behind and hold their memory', async () => {
  const { accepted } = acceptedDesigns(3, SEED);
  side.builder.dispose();
  const live = Scope.live;
  let settled = 0;
  for (let i = 0; i < 24; i++) {
    await side.builder.build((accepted[i % 3] as (typeof accepted)[0]).curves, 'reamed');
    if (i === 5) settled = heapBytes(side.kernel);
  }
  side.builder.dispose();
  expect(Scope.live, 'kernel handles alive after the builds').toBe(live);
  expect(heapBytes(side.kernel) / settled, 'growth of the kernel’s memory').toBeLessThan(1.3);
}, 300_000);
