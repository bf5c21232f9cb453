import { beforeAll, expect, test } from 'vitest';
import { topHeight } from '../../models/curves/topHeight.ts';
import { createDrafter } from '../../models/draft/draftMesh.ts';
import type { Kernel } from '../../models/kernel/kernel.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { writeStep } from '../../models/kernel/step.ts';
import { type BridgeBuilder, createBridgeBuilder } from '../../models/solid/bridge.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { holeCuts } from '../../src/making/holes.ts';
import { designText } from '../support/change.ts';
import { stepEdges } from '../support/stepEdges.ts';

// What the job by hand says is left of a bevel after reaming, measured on the reamed solid itself.

let kernel: Kernel;
let builder: BridgeBuilder;
beforeAll(async () => {
  const drafter = await createDrafter();
  kernel = await loadKernel({ threads: false });
  builder = createBridgeBuilder(kernel, (curves, holes) => drafter.draft(curves, holes).volumeMm3);
}, 60_000);

test.each([
  ['5°, 90°', {}],
  ['3°, 120°', { 'pins.taper': 3, 'pins.bevelAngle': 120, 'pins.bevelDiameter': 7.2 }],
])('%s: the ring on the solid is the ring in the job', async (_, changes) => {
  const { curves, design } = acceptDesign(designText(changes));
  const { ring } = holeCuts(design);
  for (const holes of ['drilled', 'reamed'] as const) {
    const { shape, mesh } = await builder.build(curves, holes);
    const { circles } = stepEdges(new TextDecoder().decode(writeStep(kernel, shape, 'bevel', 'AP214')));
    const outside = design.pins.bevelDiameter / 2;
    for (const { at } of curves.pins) {
      const round = circles.filter(({ centre: [x = 0, y = 0] }) => Math.hypot(x - at[0], y - at[1]) < 1e-4);
      const inner = Math.max(
        ...round.map(({ radius }) => radius).filter((radius) => radius < outside - 1e-3),
      );
      expect(outside - inner, `${holes}, the pin at ${at}`).toBeCloseTo(ring[holes], 3);
    }
    // the outside itself, on the mesh, where the crown falls by little: the nearest of the top in every direction
    const [x, y] = curves.pins.reduce((a, b) => (Math.abs(b.at[0]) < Math.abs(a.at[0]) ? b : a)).at;
    const nearest = Array<number>(8).fill(Number.POSITIVE_INFINITY);
    for (let i = 0; i < mesh.positions.length; i += 3) {
      const [px, py, pz] = [...mesh.positions.subarray(i, i + 3)] as [number, number, number];
      if (Math.abs(pz - topHeight(curves.profile, px)) > 0.02) continue;
      const sector = Math.floor(((Math.atan2(py - y, px - x) + Math.PI) / (2 * Math.PI)) * 8) % 8;
      nearest[sector] = Math.min(nearest[sector] as number, Math.hypot(px - x, py - y));
    }
    for (const radius of nearest)
      expect(Math.abs(radius - outside), `${holes}: ${nearest}`).toBeLessThan(0.15);
  }
});
