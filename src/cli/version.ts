import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** The version in the nearest package.json: in the package this file lies elsewhere than in its source. */
export function version(): string {
  let folder = path.dirname(fileURLToPath(import.meta.url));
  while (!existsSync(path.join(folder, 'package.json')) && folder !== path.dirname(folder))
    folder = path.dirname(folder);
  return (JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as { version: string }).version;
}
