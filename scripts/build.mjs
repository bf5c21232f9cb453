// Builds the app into dist/ (static: any web server can carry it) and the command line into dist-cli/; with the
// word 'app' or 'cli', that one alone.
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { copyFile, mkdir, readdir, readFile, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import zlib from 'node:zlib';
import { build } from 'vite';

/** The repository's own folder. */
export const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));

const brotli = promisify(zlib.brotliCompress);
const gzip = promisify(zlib.gzip);

/** Files below this gain nothing that a packet would notice. */
const smallestBytes = 1024;
const compressible = /\.(css|html|js|json|md|mjs|svg|ttf|txt|wasm)$/;

/**
 * Level 9 with a window of 16 MB: the kernel (23 MB) takes seconds and comes out within a tenth of what level 11
 * makes of it in a minute.
 * @type {{ ending: string, compress: (content: Buffer) => Promise<Buffer> }[]}
 */
const forms = [
  {
    ending: '.br',
    compress: (content) =>
      brotli(content, {
        params: {
          [zlib.constants.BROTLI_PARAM_QUALITY]: 9,
          [zlib.constants.BROTLI_PARAM_LGWIN]: 24,
          [zlib.constants.BROTLI_PARAM_SIZE_HINT]: content.length,
        },
      }),
  },
  { ending: '.gz', compress: (content) => gzip(content, { level: 9 }) },
];

/**
 * Puts a .br and a .gz beside every file that gains by it. What was compressed once is kept under
 * node_modules/.cache by the hash of its content, so that only the first build pays for the kernel.
 * @param {string} folder
 */
async function precompress(folder) {
  const cache = path.join(root, 'node_modules/.cache/compressed');
  await mkdir(cache, { recursive: true });
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  await Promise.all(
    entries
      .filter((entry) => entry.isFile() && compressible.test(entry.name))
      .map(async (entry) => {
        const file = path.join(entry.parentPath, entry.name);
        const content = await readFile(file);
        if (content.length < smallestBytes) return;
        const hash = createHash('sha256').update(content).digest('hex');
        for (const { ending, compress } of forms) {
          const kept = path.join(cache, hash + ending);
          if (!existsSync(kept)) {
            const unfinished = `${kept}.${process.pid}`;
            await writeFile(unfinished, await compress(content));
            await rename(unfinished, kept);
          }
          await copyFile(kept, file + ending);
        }
      }),
  );
}

/** The bundler's own remark on how long its plugins take is nothing that whoever starts the page can act on. */
const checks = { pluginTimings: false };

/**
 * Builds the app.
 * @param {string} [folder] where to, instead of dist/
 * @returns {Promise<string>} the absolute folder
 */
export async function buildApp(folder = path.join(root, 'dist')) {
  await build({
    root,
    configFile: path.join(root, 'vite.config.ts'),
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true, rolldownOptions: { checks } },
    worker: { rolldownOptions: { checks } },
  });
  await precompress(folder);
  return folder;
}

/**
 * Builds the command line, which finds its packages where npm put them.
 * @returns {Promise<string>} the file to run
 */
export async function buildCli() {
  const folder = path.join(root, 'dist-cli');
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    build: {
      ssr: 'src/cli/main.ts',
      target: 'node20',
      outDir: folder,
      copyPublicDir: false,
      rolldownOptions: { checks, output: { entryFileNames: 'pinbridge.js' } },
    },
  });
  return path.join(folder, 'pinbridge.js');
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const [only] = process.argv.slice(2);
  if (only !== 'cli') {
    console.log('Building the page …');
    console.log(`The page is built: ${await buildApp()}`);
  }
  if (only !== 'app') console.log(`The command line is built: ${await buildCli()}`);
}
