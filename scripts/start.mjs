// npm start: builds the app, serves it and prints the address. --port N asks for one port and no other.
import { parseArgs } from 'node:util';
import { buildApp } from './build.mjs';
import { serve } from './serve.mjs';

const usualPort = 4173;
/** How many ports after the usual one are tried before giving up. */
const tries = 20;

const { values } = parseArgs({ options: { port: { type: 'string' } } });
const asked = values.port === undefined ? undefined : Number(values.port);
if (asked !== undefined && !(Number.isInteger(asked) && asked >= 0 && asked <= 65535)) {
  console.error(`--port ${values.port}: a port is a whole number from 0 to 65535`);
  process.exit(2);
}

/**
 * @param {string} folder
 * @param {number} first
 * @param {number} last
 */
async function serveOnFreePort(folder, first, last) {
  for (let port = first; ; port++) {
    try {
      return await serve(folder, port);
    } catch (error) {
      const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!taken || port >= last) throw error;
    }
  }
}

console.log('Building …');
const folder = await buildApp();
try {
  const { url } = await serveOnFreePort(folder, asked ?? usualPort, asked ?? usualPort + tries);
  console.log(`Pinbridge is at ${url} (Ctrl+C stops it)`);
} catch (error) {
  console.error(
    `The app is built, but could not be served: ${error instanceof Error ? error.message : error}`,
  );
  process.exit(1);
}
