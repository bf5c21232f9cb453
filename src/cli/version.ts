import { existsSync, readFileSync } from 'node:fs';

/** The version in the nearest package.json: this file lies elsewhere in the package than in its source. */
export function version(): string {
  let folder = new URL('.', import.meta.url);
  while (!existsSync(new URL('package.json', folder)) && folder.pathname !== '/')
    folder = new URL('..', folder);
  return (JSON.parse(readFileSync(new URL('package.json', folder), 'utf8')) as { version: string }).version;
}
