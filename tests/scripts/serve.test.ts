import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { brotliCompressSync, brotliDecompressSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accepted, serve } from '../../scripts/serve.mjs';

const script = "export const part = 'bridge';\n".repeat(50);
let parent: string;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  parent = await mkdtemp(path.join(tmpdir(), 'serve-'));
  const folder = path.join(parent, 'dist');
  await mkdir(path.join(folder, 'assets'), { recursive: true });
  await writeFile(path.join(parent, 'secret.txt'), 'secret');
  await writeFile(path.join(folder, 'index.html'), '<p>Pinbridge</p>');
  await writeFile(path.join(folder, 'assets/kernel-a1.wasm'), '\0asm');
  await writeFile(path.join(folder, 'assets/part-b2.js'), script);
  await writeFile(path.join(folder, 'assets/part-b2.js.br'), brotliCompressSync(script));
  server = await serve(folder, 0);
});

afterAll(async () => {
  await server.close();
  await rm(parent, { recursive: true, force: true });
});

/** Asks for a path exactly as written: fetch would tidy `..` away before sending it. */
function ask(target: string, headers: Record<string, string> = {}, method = 'GET') {
  return new Promise<{ status: number; headers: Record<string, unknown>; body: Buffer }>(
    (resolve, reject) => {
      const asked = request(
        { port: server.port, host: '127.0.0.1', path: target, headers, method },
        (answer) => {
          const parts: Buffer[] = [];
          answer.on('data', (part: Buffer) => parts.push(part));
          answer.on('end', () =>
            resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body: Buffer.concat(parts) }),
          );
        },
      );
      asked.on('error', reject);
      asked.end();
    },
  );
}

describe('serve', () => {
  test('gives the page for /, isolated and asked for anew each time', async () => {
    const { status, headers, body } = await ask('/?from=elsewhere');
    expect([status, body.toString()]).toEqual([200, '<p>Pinbridge</p>']);
    expect(headers).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-embedder-policy': 'require-corp',
      'cache-control': 'no-cache',
    });
  });

  test('gives the kernel the type that lets it compile while it loads, to be kept for good', async () => {
    const { headers } = await ask('/assets/kernel-a1.wasm');
    expect(headers['content-type']).toBe('application/wasm');
    expect(headers['cache-control']).toContain('immutable');
  });

  test('gives the compressed file to those who take it, the plain one to others', async () => {
    const packed = await ask('/assets/part-b2.js', { 'Accept-Encoding': 'gzip, br' });
    expect(packed.headers).toMatchObject({
      'content-encoding': 'br',
      'content-type': 'text/javascript; charset=utf-8',
      'content-length': String(packed.body.length),
    });
    expect(brotliDecompressSync(packed.body).toString()).toBe(script);
    const plain = await ask('/assets/part-b2.js', { 'Accept-Encoding': 'br;q=0' });
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(plain.body.toString()).toBe(script);
  });

  test('says when nothing has changed', async () => {
    const { headers } = await ask('/');
    const again = await ask('/', { 'If-None-Match': String(headers.etag) });
    expect([again.status, again.body.length]).toEqual([304, 0]);
  });

  test.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/assets/../../secret.txt',
    '/..%5csecret.txt',
    '//secret.txt',
    '/index.html%00',
    '/assets/',
    '/gone.html',
  ])('gives nothing for %s', async (target) => {
    const { status, body } = await ask(target);
    expect([status, body.toString()]).toEqual([404, '404\n']);
  });

  test('refuses what it cannot read, and what would change something', async () => {
    expect((await ask('/%zz')).status).toBe(400);
    const { status, headers } = await ask('/', {}, 'POST');
    expect([status, headers.allow]).toEqual([405, 'GET, HEAD']);
    expect((await ask('/', {}, 'HEAD')).body.length).toBe(0);
  });

  test('says which port is taken', async () => {
    await expect(serve(path.join(parent, 'dist'), server.port)).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });
});

test('accepted reads weights', () => {
  expect([...accepted('gzip;q=0.8, br ; q=1.0, deflate;q=0, ')]).toEqual(['gzip', 'br']);
});
