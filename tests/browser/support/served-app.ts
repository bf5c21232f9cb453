import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import path from 'node:path';
import type { TestProject } from 'vitest/node';
import { buildApp } from '../../../scripts/build.mjs';
import { serve } from '../../../scripts/serve.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the app that the browser tests look at is served. */
    appUrl: string;
  }
}

/** Builds the app as it is shipped, into a folder of its own, and serves it for as long as the tests run. */
export default async function servedApp(project: TestProject) {
  const cache = path.resolve('node_modules/.cache');
  await mkdir(cache, { recursive: true });
  const folder = await mkdtemp(path.join(cache, 'built-app-'));
  await buildApp(folder);
  const server = await serve(folder, 0);
  project.provide('appUrl', server.url);
  return async () => {
    await server.close();
    await rm(folder, { recursive: true, force: true });
  };
}
