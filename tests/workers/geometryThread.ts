import { parentPort } from 'node:worker_threads';
import { createDrafter } from '../../models/draft/draftMesh.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { createBridgeBuilder } from '../../models/solid/bridge.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { createGeometry } from '../../workers/geometry.ts';
import { geometryService } from '../../workers/geometryService.ts';
import type { GeometryCall } from '../../workers/protocol.ts';
import { serve } from '../../workers/serve.ts';
import { nodePort } from './nodeWorker.ts';

/** A design of this name gets an edge that validation would refuse: what then meets the kernel is impossible. */
export const IMPOSSIBLE = 'edge larger than the wood';

void serve<GeometryCall>(nodePort(parentPort), async () => {
  const kernel = await loadKernel({ threads: false });
  const drafter = await createDrafter();
  const service = geometryService(createGeometry(kernel, drafter));
  const reckless = createBridgeBuilder(kernel, (curves, holes) => drafter.draft(curves, holes).volumeMm3);
  return {
    ...service,
    answer: {
      ...service.answer,
      solid: async ({ design, holes }, signal) => {
        if (design.guitar.name === IMPOSSIBLE) {
          const { curves } = acceptDesign(design);
          await reckless.build({ ...curves, edge: { kind: 'round', size: 60 } }, holes);
        }
        return service.answer.solid({ design, holes }, signal);
      },
    },
  };
});
