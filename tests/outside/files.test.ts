import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import manifold from 'manifold-3d';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { writeStep } from '../../models/kernel/step.ts';
import { writeStl } from '../../models/kernel/stl.ts';
import type { BuiltSolid } from '../../models/solid/bridge.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { roadside } from '../support/roads.ts';
import { secondReader } from '../support/secondReader.ts';

// Facts of the file formats: ISO 10303-21 (clear text encoding); binary STL, 84 + 50 n bytes (from memory).

/** An apostrophe, an umlaut, a character of two bytes and one beyond the basic plane. */
const NAME = "Dünn O'Brien 弦 🎸";

let built: BuiltSolid;
let step: Uint8Array;
let stl: Uint8Array;
const folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-files-'));
beforeAll(async () => {
  const side = await roadside();
  const { curves } = acceptDesign(initialDesign());
  built = await side.builder.build(curves, 'reamed');
  step = writeStep(side.kernel, built.shape, NAME, 'AP214');
  stl = writeStl(side.kernel, built.shape, 'Outside', 0.02, 0.3);
  writeFileSync(path.join(folder, 'part.step'), step);
  writeFileSync(path.join(folder, 'part.stl'), stl);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('STEP', () => {
  test('has the frame, schema, unit and product name that the standard asks for', () => {
    const text = new TextDecoder().decode(step);
    expect(text.startsWith('ISO-10303-21;')).toBe(true);
    expect(text.trimEnd().endsWith('END-ISO-10303-21;')).toBe(true);
    expect(text).toMatch(/FILE_SCHEMA\(\('AUTOMOTIVE_DESIGN/);
    expect(text).toContain('SI_UNIT(.MILLI.,.METRE.)');
    expect(text).toMatch(/^[\n\r\x20-\x7e]*$/);
    expect(text.replaceAll('\n', '')).toContain(
      "PRODUCT('D\\X2\\00FC\\X0\\nn O''Brien \\X2\\5F26\\X0\\ \\X4\\0001F3B8\\X0\\'",
    );
    expect(text.match(/MANIFOLD_SOLID_BREP/g)).toHaveLength(1);
  });

  test('a second exact kernel reads the same one solid', async () => {
    const read = (await secondReader())(step);
    expect(read.solids).toBe(1);
    expect(Math.abs(read.volume / built.figures.volumeMm3 - 1), 'volume').toBeLessThan(1e-6);
    const off = Math.max(...read.box.map((b, i) => Math.abs(b - (built.figures.boxMm[i] as number))));
    expect(off, 'box, mm').toBeLessThan(1e-3);
  });
});

describe('STL', () => {
  test('is binary, of 84 + 50 n bytes, closed and outward for a mesh kernel', async () => {
    expect(new TextDecoder().decode(stl.slice(0, 5))).not.toBe('solid');
    const view = new DataView(stl.buffer, stl.byteOffset, stl.byteLength);
    const count = view.getUint32(80, true);
    expect(stl.byteLength).toBe(84 + 50 * count);
    const module = await manifold();
    module.setup();
    const corners = new Float32Array(9 * count);
    for (let t = 0; t < count; t++) {
      for (let i = 0; i < 9; i++) corners[9 * t + i] = view.getFloat32(84 + 50 * t + 12 + 4 * i, true);
    }
    const mesh = new module.Mesh({
      numProp: 3,
      vertProperties: corners,
      triVerts: Uint32Array.from({ length: 3 * count }, (_, i) => i),
    });
    mesh.merge();
    const solid = new module.Manifold(mesh);
    expect(solid.status()).toBe('NoError');
    expect(solid.genus(), 'pin holes through it').toBe(6);
    // facets of 0.02 mm and 0.3 rad lie up to 0.1 % beyond hollow faces
    const off = Math.abs(solid.volume() / built.figures.volumeMm3 - 1);
    expect(off, 'outward, and near the exact volume').toBeLessThan(2e-3);
  });
});

/** Debian's readers: asked for where the server has installed them, used wherever they are. */
const required = process.env.OUTSIDE_READERS === 'required';
const python = '/usr/bin/python3';
const has = (command: string, ...args: string[]) => spawnSync(command, args).status === 0;
const hasGmsh = required || has(python, '-c', 'import gmsh');
const hasAdmesh = required || has('admesh', '--version');
if (!hasGmsh) process.stdout.write('python3-gmsh is not installed: the native STEP reader is left out\n');
if (!hasAdmesh) process.stdout.write('admesh is not installed: the STL reader is left out\n');

describe('readers from outside', () => {
  test.runIf(hasGmsh)('gmsh’s native kernel reads the same one solid', () => {
    const out = spawnSync(python, ['tests/outside/reader.py', path.join(folder, 'part.step')], {
      encoding: 'utf8',
    });
    const read = JSON.parse(out.stdout.trim().split('\n').at(-1) ?? '') as { solids: number; volume: number };
    expect(read.solids).toBe(1);
    expect(Math.abs(read.volume / built.figures.volumeMm3 - 1)).toBeLessThan(1e-6);
  });

  test.runIf(hasAdmesh)('admesh finds the STL closed and right way round', () => {
    const out = spawnSync('admesh', [path.join(folder, 'part.stl')], { encoding: 'utf8' }).stdout;
    const all = /Total disconnected facets\s*:\s*(\d+)\s+(\d+)/.exec(out);
    expect(all?.[2], out).toBe('0');
    expect(/Facets reversed\s*:\s*(\d+)/.exec(out)?.[1], out).toBe('0');
    expect(/Number of parts\s*:\s*(\d+)/.exec(out)?.[1], out).toBe('1');
  });
});
