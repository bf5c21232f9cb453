import { expect, test } from 'vitest';
import { createDrafter } from '../../models/draft/draftMesh.ts';
import { KernelError } from '../../models/kernel/kernelError.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { Scope } from '../../models/kernel/scope.ts';
import { createBridgeBuilder } from '../../models/solid/bridge.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import type { DesignText } from '../../src/design/design.ts';
import { createGeometry } from '../../workers/geometry.ts';
import { designText } from '../support/change.ts';
import { withImpossibleEdge } from './impossible.ts';

const kernel = await loadKernel({ threads: false });
const drafter = await createDrafter();

/** Chamfered: a round-over makes the kernel take a gigabyte at once, in which a leak could hide for long. */
function chamfered(thickness: number): DesignText {
  const design = designText();
  return { ...design, top: { ...design.top, edge: 'chamfer', thickness } };
}

test('60 rebuilds, failing and abandoned ones among them, hold no handle and little memory', {
  timeout: 900_000,
}, async () => {
  const geometry = createGeometry(kernel, drafter);
  const reckless = createBridgeBuilder(kernel, (curves, holes) => drafter.draft(curves, holes).volumeMm3);
  const handles = Scope.live;
  await geometry.solid(chamfered(9), 'drilled');
  const held = Scope.live;
  const heap = geometry.heapBytes();
  for (let i = 0; i < 60; i++) {
    const design = chamfered(9.1 + ((i * 7) % 60) / 100);
    if (i % 15 === 5) {
      const asked = reckless.build(withImpossibleEdge(acceptDesign(design).curves), 'drilled');
      await expect(asked).rejects.toThrow(KernelError);
    } else if (i % 15 === 10) {
      await expect(geometry.solid(design, 'drilled', { abandoned: true })).rejects.toThrow('abandoned');
    } else {
      await geometry.solid(design, i % 2 === 0 ? 'drilled' : 'reamed');
    }
  }
  reckless.dispose();
  await geometry.solid(chamfered(9), 'drilled');
  expect(Scope.live, 'handles alive after the same build as at the start').toBe(held);
  geometry.dispose();
  expect(Scope.live, 'handles alive after everything was let go').toBe(handles);
  // Measured: 104 MB, most of it lost by the kernel's own validity check, about 1 MB a call that nothing frees (the
  // client replaces the worker in time). Booleans that are not cleared lose some 110 MB more.
  const grown = (geometry.heapBytes() - heap) / 1e6;
  expect(grown, 'MB that the kernel grew by in 60 rebuilds').toBeLessThan(160);
});
