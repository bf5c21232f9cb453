import { expect, test } from 'vitest';
import { createDrafter } from '../../models/draft/draftMesh.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { createBridgeBuilder } from '../../models/solid/bridge.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { withImpossibleEdge } from '../workers/impossible.ts';

const kernel = await loadKernel({ threads: false });
const drafter = await createDrafter();
const { curves } = acceptDesign(initialDesign());

/** How often the builder comes up for air in a build that is refused: once before each feature, and before the check. */
async function refusedAfter(
  draftShare: number,
  build: typeof curves,
): Promise<{ pauses: number; reason: string }> {
  const builder = createBridgeBuilder(kernel, (c, holes) => draftShare * drafter.draft(c, holes).volumeMm3);
  let pauses = 0;
  try {
    await builder.build(build, 'reamed', async () => {
      pauses++;
    });
  } catch (error) {
    return { pauses, reason: String(error) };
  } finally {
    builder.dispose();
  }
  throw new Error('the solid was let pass');
}

test('a body that fails is not tried again: no other way of making holes changes it', async () => {
  const { pauses, reason } = await refusedAfter(1, withImpossibleEdge(curves));
  expect(reason).toMatch(/^KernelError: body: /);
  expect(pauses).toBe(1);
});

test('a solid that fails the gate is tried with every way of making holes, the body being kept', async () => {
  const { pauses, reason } = await refusedAfter(1.01, curves);
  expect(reason).toMatch(/check of the finished solid: its volume is/);
  // body; then holes, slot and check in each of the four ways
  expect(pauses).toBe(1 + 4 * 3);
});
