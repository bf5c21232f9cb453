import { serve } from './serve.ts';
import { workerPort } from './workerPort.ts';

declare const self: DedicatedWorkerGlobalScope;

// Loaded from inside, so that the worker listens before it loads and a failed load is reported.
void serve(workerPort(self), async () => (await import('./geometryService.ts')).geometryService());
