// npm start, after building: serves dist/ and prints the address. --port N asks for one port and no other.
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { serve } from './serve.mjs';

const folder = path.join(path.dirname(path.dirname(fileURLToPath(import.meta.url))), 'dist');
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
 * @param {number} first
 * @param {number} last
 */
async function serveOnFreePort(first, last) {
  for (let port = first; ; port++) {
    try {
      return await serve(folder, port);
    } catch (error) {
      const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!taken || port >= last) throw error;
    }
  }
}

try {
  const { url } = await serveOnFreePort(asked ?? usualPort, asked ?? usualPort + tries);
  console.log(`Pinbridge is at ${url} (Ctrl+C stops it)`);
} catch (error) {
  console.error(`The app could not be served: ${error instanceof Error ? error.message : error}`);
  process.exit(1);
}
