import { beforeAll, expect, test } from 'vitest';
import { createDrafter } from '../../models/draft/draftMesh.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { type BridgeBuilder, createBridgeBuilder } from '../../models/solid/bridge.ts';
import { massG } from '../../models/surface/figures.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { designText } from '../support/change.ts';

let builder: BridgeBuilder;
beforeAll(async () => {
  const drafter = await createDrafter();
  builder = createBridgeBuilder(
    await loadKernel({ threads: false }),
    (curves, holes) => drafter.draft(curves, holes).volumeMm3,
  );
}, 60_000);

test.each([
  ['tip', 26.4, {}],
  ['thickness', 25.3, { 'pins.channel': 'ramp' }],
  ['block', 26.9, { 'top.edge': 'chamfer', 'top.wing': 'hollow' }],
  ['length', 27.4, { 'guitar.hand': 'left' }],
  ['depth', 28, { 'saddle.tilt': 6, 'footprint.tip': 'round' }],
])('the exact solid weighs what was aimed at when %s follows: %f g', async (follows, grams, changes) => {
  const { curves, design, aimed } = acceptDesign(
    designText({ 'aim.of': 'mass', 'aim.mass': grams, 'aim.follows': follows, ...changes }),
  );
  const { figures } = await builder.build(curves, 'reamed');
  const mass = massG(figures.volumeMm3, design.timber.density);
  expect(Math.abs(mass - grams), `${mass} g with ${aimed?.path} ${aimed?.value}`).toBeLessThan(0.05);
});
