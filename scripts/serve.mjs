// A small static server for the built app. The app itself needs no particular one: any web server will do, and
// with these two isolation headers the kernel runs in several threads.
import { createReadStream, readdirSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { pipeline } from 'node:stream';

/** Sent with every answer; without the first two a browser gives the page no shared memory, hence one thread. */
export const isolationHeaders = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** @type {Record<string, string>} */
const types = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.md': 'text/markdown; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

const encodings = [
  { name: 'br', ending: '.br' },
  { name: 'gzip', ending: '.gz' },
];

/**
 * @param {string} header the request's Accept-Encoding
 * @returns {Set<string>} the encodings the browser takes (those with a weight of nought left out)
 */
export function accepted(header) {
  const names = new Set();
  for (const part of header.split(',')) {
    const [name = '', ...parameters] = part.split(';').map((word) => word.trim().toLowerCase());
    const weight = parameters.find((word) => word.startsWith('q='));
    if (name && (!weight || Number(weight.slice(2)) > 0)) names.add(name);
  }
  return names;
}

/**
 * @param {string} folder absolute
 * @returns {Map<string, { file: string, size: number, tag: string }>} every file below it, by its path in a URL
 */
function filesIn(folder) {
  const found = new Map();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const file = path.join(entry.parentPath, entry.name);
    const { size, mtimeMs } = statSync(file);
    const tag = `"${size.toString(36)}-${Math.round(mtimeMs).toString(36)}"`;
    found.set(`/${path.relative(folder, file).split(path.sep).join('/')}`, { file, size, tag });
  }
  return found;
}

/**
 * Serves a built folder, as it is at this moment, to this machine alone. Only files found in it by walking it can
 * be asked for, so that no path, however written, leads out of it.
 *
 * @param {string} folder the built app
 * @param {number} port 0 takes any free one
 * @returns {Promise<{ url: string, port: number, close: () => Promise<void> }>}
 * @throws if the port is taken (code EADDRINUSE)
 */
export async function serve(folder, port) {
  const files = filesIn(path.resolve(folder));

  const server = createServer((request, response) => {
    /** @type {(status: number, extra?: Record<string, string>) => void} */
    const refuse = (status, extra) => {
      response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8', ...extra });
      response.end(`${status}\n`);
    };
    if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(405, { Allow: 'GET, HEAD' });

    let name;
    try {
      name = decodeURIComponent((request.url ?? '/').replace(/[?#].*$/s, ''));
    } catch {
      return refuse(400);
    }
    if (name.endsWith('/')) name += 'index.html';
    const plain = files.get(name);
    if (!plain) return refuse(404);

    const takes = accepted(String(request.headers['accept-encoding'] ?? ''));
    const encoding = encodings.find(({ name: word, ending }) => takes.has(word) && files.has(name + ending));
    const { file, size, tag } = (encoding && files.get(name + encoding.ending)) || plain;
    const headers = {
      ...isolationHeaders,
      'Content-Type': types[path.extname(name)] ?? 'application/octet-stream',
      'X-Content-Type-Options': 'nosniff',
      // The build puts a hash of the content into the name of each file under assets/.
      'Cache-Control': name.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
      ETag: tag,
      Vary: 'Accept-Encoding',
      ...(encoding && { 'Content-Encoding': encoding.name }),
    };
    if (request.headers['if-none-match'] === tag) {
      response.writeHead(304, headers);
      response.end();
      return;
    }
    if (request.method === 'HEAD') {
      response.writeHead(200, { ...headers, 'Content-Length': size });
      response.end();
      return;
    }
    const content = createReadStream(file);
    content.once('open', () => {
      response.writeHead(200, { ...headers, 'Content-Length': size });
      pipeline(content, response, () => {});
    });
    // The folder was built anew while this server ran.
    content.once('error', () => (response.headersSent ? response.destroy() : refuse(404)));
  });

  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(undefined));
  });
  const address = server.address();
  const actual = typeof address === 'object' && address ? address.port : port;
  return {
    url: `http://localhost:${actual}/`,
    port: actual,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
