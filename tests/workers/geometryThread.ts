import { parentPort } from 'node:worker_threads';
import { createDrafter } from '../../models/draft/draftMesh.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { createBridgeBuilder } from '../../models/solid/bridge.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { createGeometry } from '../../workers/geometry.ts';
import { geometryService } from '../../workers/geometryService.ts';
import type { GeometryCall } from '../../workers/protocol.ts';
import { serve } from '../../workers/serve.ts';
import { IMPOSSIBLE, withImpossibleEdge } from './impossible.ts';
import { nodePort } from './nodeWorker.ts';

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
          await reckless.build(withImpossibleEdge(acceptDesign(design).curves), holes);
        }
        return service.answer.solid({ design, holes }, signal);
      },
    },
  };
});
