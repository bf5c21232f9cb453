// Writes licences/packages.txt into the build: every npm package that is in it, with its licence's text.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/**
 * @param {string} module a module's id, as the bundler names it
 * @returns {string | undefined} the folder of the npm package it is from
 */
function packageFolder(module) {
  const file = module.replace(/^\0/, '').replace(/\?.*$/, '');
  const match = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)/.exec(file);
  return match?.[1] && existsSync(path.join(match[1], 'package.json')) ? match[1] : undefined;
}

/**
 * @param {string} folder a package's
 * @returns {{ name: string, text: string }}
 */
function describe(folder) {
  const { name, version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
  const texts = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|notice|copying)/i.test(file))
    .map((file) => readFileSync(path.join(folder, file), 'utf8').trim());
  const title = `${name} ${version}: ${license}`;
  return { name, text: [title, '-'.repeat(title.length), ...texts].join('\n\n') };
}

/**
 * A pair of plugins, since Vite bundles workers apart from the page: one that only takes note of packages, for the
 * workers, and one that takes note and writes, for the page, whose bundle is made after theirs.
 * @returns {{ page: import('vite').Plugin, worker: import('vite').Plugin }}
 */
export function licences() {
  /** @type {Set<string>} */
  const folders = new Set();
  /** @param {{ id: string }} module */
  const note = ({ id }) => {
    const folder = packageFolder(id);
    if (folder) folders.add(folder);
  };
  return {
    worker: { name: 'licences-of-workers', moduleParsed: note },
    page: {
      name: 'licences',
      moduleParsed: note,
      generateBundle() {
        const packages = [...folders].map(describe).sort((a, b) => (a.name < b.name ? -1 : 1));
        const source = `${packages.map(({ text }) => text).join('\n\n\n')}\n`;
        this.emitFile({ type: 'asset', fileName: 'licences/packages.txt', source });
      },
    },
  };
}
