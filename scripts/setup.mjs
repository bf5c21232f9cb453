// Makes node_modules match package-lock.json, and does nothing when it already does. Runs before everything
// else, on a machine that has only Node and npm: so it imports nothing but Node itself.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));

/**
 * @typedef {{ version?: string, integrity?: string, optional?: boolean, os?: string[], cpu?: string[] }} Entry
 */

/**
 * @param {string} file a lock file, npm's own inside node_modules or the committed one
 * @returns {Record<string, Entry>} its entries by folder, without the project itself
 */
function entries(file) {
  const { '': _project, ...packages } = JSON.parse(readFileSync(file, 'utf8')).packages;
  return packages;
}

/**
 * npm writes node_modules/.package-lock.json last of all, so that a stopped install leaves none, and lists in it
 * what is really there. Optional packages for other systems are missing from it by right; packages that were
 * installed on another system (a folder copied, or shared with a container) are wrong here.
 * @returns {boolean} whether an install is needed
 */
function outOfDate() {
  const there = path.join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(there)) return true;
  const wanted = entries(path.join(root, 'package-lock.json'));
  const installed = entries(there);
  for (const [folder, entry] of Object.entries(wanted)) {
    const found = installed[folder];
    if (!found && !entry.optional) return true;
    if (found && (found.version !== entry.version || found.integrity !== entry.integrity)) return true;
  }
  return Object.entries(installed).some(
    ([folder, entry]) =>
      !(folder in wanted) ||
      (entry.os && !entry.os.includes(process.platform)) ||
      (entry.cpu && !entry.cpu.includes(process.arch)),
  );
}

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Pinbridge needs Node 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

if (outOfDate()) {
  console.error('Installing what package-lock.json lists …');
  // The command line prints JSON on stdout after this: npm's own words go to stderr.
  const npm = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (npm.status !== 0) {
    console.error(npm.error ? `npm could not be started: ${npm.error.message}` : 'npm ci failed: see above.');
    process.exit(npm.status ?? 1);
  }
}
