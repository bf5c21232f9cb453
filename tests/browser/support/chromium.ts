import { existsSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { LaunchOptions } from 'playwright-core';

/** WebGL drawn by the processor: the same picture on every machine, and no graphics card is needed. */
const flags = [
  '--no-sandbox',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
];

/**
 * How to launch a Chromium for the tests: the one at CHROMIUM_PATH, else the one that came with the npm packages,
 * unpacked once into node_modules/.cache. That one runs on Linux on x64 alone, with nothing else installed.
 *
 * @throws Error that names CHROMIUM_PATH where the packaged one cannot run or be unpacked
 */
export async function chromium(): Promise<LaunchOptions> {
  const given = process.env.CHROMIUM_PATH;
  if (given) {
    if (!existsSync(given)) throw new Error(`CHROMIUM_PATH is ${given}, and there is no such file`);
    return { executablePath: given, args: flags };
  }
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error(
      `The packaged Chromium runs on Linux on x64, and this is ${process.platform} on ${process.arch}: ` +
        'set CHROMIUM_PATH to the program file of a Chromium or Chrome and run the tests again',
    );
  }
  const folder = await unpacked();
  return {
    executablePath: path.join(folder, 'chromium'),
    args: flags,
    env: {
      ...process.env,
      LD_LIBRARY_PATH: path.join(folder, 'al2023/lib'),
      FONTCONFIG_FILE: path.join(folder, 'fonts.conf'),
    },
  };
}

/** The folder with the unpacked browser, its libraries and its fonts: whole, or not there at all. */
async function unpacked(): Promise<string> {
  const { version } = JSON.parse(await readFile('node_modules/@sparticuz/chromium/package.json', 'utf8'));
  const folder = path.resolve('node_modules/.cache/chromium', version);
  if (existsSync(folder)) return folder;

  const unfinished = `${folder}.${process.pid}`;
  await rm(unfinished, { recursive: true, force: true });
  await mkdir(unfinished, { recursive: true });
  try {
    await unpackInto(unfinished);
    await writeFile(path.join(unfinished, 'fonts.conf'), fontsConf(folder));
    await rename(unfinished, folder);
  } catch (error) {
    await rm(unfinished, { recursive: true, force: true });
    // Another run unpacked it meanwhile.
    if (existsSync(folder)) return folder;
    throw new Error(
      `The packaged Chromium could not be unpacked into ${folder} (it takes 300 MB): ` +
        'make room, or set CHROMIUM_PATH to another Chromium',
      { cause: error },
    );
  }
  return folder;
}

/**
 * The package unpacks into TMPDIR, and adds the libraries a bare machine lacks (libnss3, libnspr4, libexpat) only
 * when AWS_LAMBDA_JS_RUNTIME tells it that it stands on one. Both, and what its import sets besides, are undone.
 */
async function unpackInto(folder: string) {
  const before = { ...process.env };
  process.env.TMPDIR = folder;
  process.env.AWS_LAMBDA_JS_RUNTIME = 'nodejs22.x';
  try {
    const { default: packaged } = await import('@sparticuz/chromium');
    await packaged.executablePath();
  } finally {
    for (const name of Object.keys(process.env)) if (!(name in before)) delete process.env[name];
    Object.assign(process.env, before);
  }
  for (const file of ['chromium', 'libGLESv2.so', 'al2023/lib/libnss3.so', 'fonts'])
    if (!existsSync(path.join(folder, file))) throw new Error(`${file} is not in the package`);
}

/** The package's own names a fixed folder; with it, a machine without fonts draws no text, and no test fails. */
function fontsConf(folder: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${folder}/fonts</dir>
  <cachedir>${folder}/fonts-cache</cachedir>
</fontconfig>
`;
}
