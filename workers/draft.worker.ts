import type { DraftCall } from './protocol.ts';
import { serve } from './serve.ts';
import { workerPort } from './workerPort.ts';

declare const self: DedicatedWorkerGlobalScope;

// Loaded from inside, so that the worker listens before it loads and a failed load is reported.
void serve(workerPort<DraftCall>(self), async () => {
  const [{ createDrafter }, { draftService }] = await Promise.all([
    import('../models/draft/draftMesh.ts'),
    import('./draftService.ts'),
  ]);
  return draftService(await createDrafter());
});
