import { type GeometryCall, ONE_THREAD } from './protocol.ts';
import { serve } from './serve.ts';
import { workerPort } from './workerPort.ts';

declare const self: DedicatedWorkerGlobalScope;

// Threads share memory, which browsers allow only where the server isolates the page.
const threads = self.crossOriginIsolated && self.name !== ONE_THREAD;

// Loaded from inside, so that the worker listens before it loads and a failed load is reported.
void serve(workerPort<GeometryCall>(self), async () => {
  const [{ loadGeometry }, { geometryService }] = await Promise.all([
    import('./loadGeometry.ts'),
    import('./geometryService.ts'),
  ]);
  return geometryService(await loadGeometry(threads));
});
