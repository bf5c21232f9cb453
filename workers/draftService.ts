import type { Drafter } from '../models/draft/draftMesh.ts';
import { initialDesign } from '../src/design/initial.ts';
import { draft } from './draft.ts';
import { meshBuffers } from './meshBuffers.ts';
import type { DraftCall } from './protocol.ts';
import type { Service } from './serve.ts';

/** A drafter as the worker serves it. */
export function draftService(drafter: Drafter): Service<DraftCall> {
  return {
    threads: false,
    heapBytes: () => drafter.heapBytes(),
    warmUp: async () => {
      draft(drafter, initialDesign(), 'reamed');
    },
    answer: { draft: async ({ design, holes }) => draft(drafter, design, holes) },
    transfer: ({ mesh }) => meshBuffers(mesh),
  };
}
