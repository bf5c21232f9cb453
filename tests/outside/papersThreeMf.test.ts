import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { DOMParser } from 'linkedom';
import manifold from 'manifold-3d';
import type { Group, Mesh } from 'three';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { meshOf } from '../../models/kernel/mesh.ts';
import { STARTER_FILES } from '../../src/cli/starterFiles.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { writeThreeMf } from '../../src/files/threeMf.ts';
import { closedMesh } from '../support/closedMesh.ts';
import { hasPython, PYTHON, said } from '../support/outsideReaders.ts';
import { type Roadside, roadside } from '../support/roads.ts';

// Read by three's loader, whose words of XML are linkedom's, by a mesh kernel, and by Python's ZIP and XML readers.

const facts = { title: 'Bittern “½” <b> 🪵', date: new Date('2026-03-04T05:06:07Z') };
/** As fine as an STL is written, mm and radians. */
const [DEVIATION, ANGLE] = [0.02, 0.3];
const names = ['Wagtail', 'Bittern', 'Gannet'] as const;

let side: Roadside;
const files = new Map<string, { bytes: Uint8Array; volume: number; pins: number }>();
const folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-3mf-'));
beforeAll(async () => {
  side = await roadside();
  for (const name of names) {
    const { curves } = acceptDesign(STARTER_FILES.find((one) => one.name === name)?.json);
    const { shape, figures } = await side.builder.build(curves, 'reamed');
    const bytes = writeThreeMf(meshOf(side.kernel, shape, DEVIATION, ANGLE), facts);
    files.set(name, { bytes, volume: figures.volumeMm3, pins: curves.pins.length });
    writeFileSync(path.join(folder, `${name}.3mf`), bytes);
  }
  vi.stubGlobal('DOMParser', DOMParser);
});
afterAll(() => {
  vi.unstubAllGlobals();
  rmSync(folder, { recursive: true, force: true });
});

/** What three's loader makes of a 3MF: one mesh. */
async function loaded(bytes: Uint8Array) {
  const { ThreeMFLoader } = await import('three/examples/jsm/loaders/3MFLoader.js');
  const group: Group = new ThreeMFLoader().parse(bytes.slice().buffer);
  const meshes: Mesh[] = [];
  group.traverse((one) => {
    if ('isMesh' in one) meshes.push(one as Mesh);
  });
  expect(meshes).toHaveLength(1);
  const geometry = (meshes[0] as Mesh).geometry;
  const positions = Float32Array.from(geometry.getAttribute('position').array);
  const triangles = Uint32Array.from(geometry.index?.array ?? []);
  return { positions, triangles };
}

describe.each(names)('%s', (name) => {
  test('three’s loader reads a closed, outward solid with a hole for each pin', async () => {
    const { bytes, volume, pins } = files.get(name) as { bytes: Uint8Array; volume: number; pins: number };
    const mesh = await loaded(bytes);
    const figures = closedMesh(mesh);
    expect(figures).toMatchObject({ openSides: 0, pieces: 1, genus: pins });
    // facets of 0.02 mm lie up to 0.1 % beyond hollow faces
    expect(Math.abs(figures.volume / volume - 1), 'outward, and near the exact volume').toBeLessThan(2e-3);
    const module = await manifold();
    module.setup();
    const { positions: vertProperties, triangles: triVerts } = mesh;
    const solid = new module.Manifold(new module.Mesh({ numProp: 3, vertProperties, triVerts }));
    expect(solid.status(), 'by vertex numbers alone').toBe('NoError');
    expect(solid.genus()).toBe(pins);
  });

  /** Prints what Python's readers make of a 3MF, its edges counted by vertex numbers. */
  const READ = `
import json, sys, zipfile, xml.etree.ElementTree as tree
from collections import Counter
archive = zipfile.ZipFile(sys.argv[1])
bad = archive.testzip()
ns = {'m': 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02'}
rels = tree.fromstring(archive.read('_rels/.rels'))
types = tree.fromstring(archive.read('[Content_Types].xml'))
model = tree.fromstring(archive.read(rels[0].get('Target').lstrip('/')))
vertices = [[float(v.get(k)) for k in 'xyz'] for v in model.iterfind('.//m:vertex', ns)]
triangles = [[int(t.get(k)) for k in ('v1', 'v2', 'v3')] for t in model.iterfind('.//m:triangle', ns)]
edges = Counter(frozenset((t[i], t[(i + 1) % 3])) for t in triangles for i in range(3))
volume = 0
for a, b, c in ([vertices[i] for i in t] for t in triangles):
  volume += (a[0]*(b[1]*c[2]-b[2]*c[1]) + a[1]*(b[2]*c[0]-b[0]*c[2]) + a[2]*(b[0]*c[1]-b[1]*c[0])) / 6
print(json.dumps({
  'bad': bad, 'names': archive.namelist(), 'dates': sorted({i.date_time for i in archive.infolist()}),
  'type': rels[0].get('Type'), 'extensions': sorted(t.get('Extension') for t in types),
  'tag': model.tag, 'unit': model.get('unit'),
  'metadata': {m.get('name'): m.text for m in model.iterfind('m:metadata', ns)},
  'built': [i.get('objectid') for i in model.iterfind('m:build/m:item', ns)],
  'objects': [[o.get('id'), o.get('type')] for o in model.iterfind('m:resources/m:object', ns)],
  'edges': sorted(set(edges.values())), 'distinct': len({tuple(v) for v in vertices}) == len(vertices),
  'used': len({i for t in triangles for i in t}) == len(vertices), 'volume': volume,
}))`;

  test.runIf(hasPython)('Python’s readers find what the core specification asks for', () => {
    const read = JSON.parse(said(PYTHON, '-c', READ, path.join(folder, `${name}.3mf`))) as { volume: number };
    expect(read).toMatchObject({
      bad: null,
      names: ['[Content_Types].xml', '_rels/.rels', '3D/3dmodel.model'],
      dates: [[2026, 3, 4, 5, 6, 6]],
      type: 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel',
      extensions: ['model', 'rels'],
      tag: '{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}model',
      unit: 'millimeter',
      metadata: { Title: facts.title, Application: 'Pinbridge', CreationDate: '2026-03-04' },
      built: ['1'],
      objects: [['1', 'model']],
      edges: [2],
      distinct: true,
      used: true,
    });
    expect(read.volume).toBeGreaterThan(0);
    expect(Math.abs(read.volume / (files.get(name)?.volume ?? 0) - 1)).toBeLessThan(2e-3);
  });
});
