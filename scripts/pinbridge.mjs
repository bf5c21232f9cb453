#!/usr/bin/env node
// The command line's door. In the package it runs what was built; in a clone it first installs and builds
// whatever is missing or older than its sources, saying nothing on stdout.
import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const built = path.join(root, 'dist-cli/pinbridge.js');
const sources = ['src', 'models', 'workers', 'public', 'package-lock.json', 'scripts/build.mjs'];

/**
 * @param {string} place a file or a folder
 * @returns {number} when it, or the newest thing in it, was changed (ms)
 */
function changed(place) {
  const own = statSync(place);
  if (!own.isDirectory()) return own.mtimeMs;
  return readdirSync(place, { recursive: true }).reduce(
    (newest, name) => Math.max(newest, statSync(path.join(place, String(name))).mtimeMs),
    own.mtimeMs,
  );
}

if (existsSync(path.join(root, 'src/cli/main.ts'))) {
  const newest = Math.max(
    ...sources
      .map((name) => path.join(root, name))
      .filter((place) => existsSync(place))
      .map(changed),
  );
  if (!existsSync(built) || statSync(built).mtimeMs < newest) {
    await import('./setup.mjs');
    const { buildCli } = await import('./build.mjs');
    await buildCli();
  }
}

// npm runs scripts in the package's folder: the user's relative paths are meant from where the user stands.
if (process.env.npm_lifecycle_event === 'pinbridge' && process.env.INIT_CWD)
  process.chdir(process.env.INIT_CWD);

await import(pathToFileURL(built).href);
