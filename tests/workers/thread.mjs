// A Node thread that runs a TypeScript file: the loader has to be there before the file is read.
import { workerData } from 'node:worker_threads';
import { register } from 'tsx/esm/api';

register();
await import(workerData);
