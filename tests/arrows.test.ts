import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { wrongArrows } from './support/arrows.ts';

/** The text of every file in the rooms, and the names of those in public/, by path from the top. */
function repository(): Map<string, string> {
  const files = new Map<string, string>();
  for (const top of ['src', 'models', 'workers', 'public']) {
    if (!existsSync(top)) continue;
    for (const entry of readdirSync(top, { recursive: true, withFileTypes: true })) {
      const file = path.join(entry.parentPath, entry.name);
      const text = entry.isFile() && /\.tsx?$/.test(file) ? readFileSync(file, 'utf8') : '';
      if (entry.isFile()) files.set(file.split(path.sep).join('/'), text);
    }
  }
  return files;
}

test('every import in src, models and workers goes along an arrow, and none goes round', () => {
  expect(wrongArrows(repository())).toEqual([]);
});

describe('the checker finds', () => {
  /** What it says about one file that stands among some others. */
  const check = (file: string, source: string) =>
    wrongArrows(
      new Map([
        ['src/design/design.ts', 'export interface Design {}\nexport const format = 1;'],
        ['src/design/problem.ts', 'export class DesignError extends Error {}'],
        ['src/trade/woods.ts', 'export const woods = [];'],
        ['models/curves/outline.ts', 'export const outline = 1;'],
        ['models/surface/heights.ts', 'export const heights = 1;'],
        ['models/kernel/kernel.ts', 'export const kernel = 1;'],
        ['models/solid/bridge.ts', 'export const bridge = 1;'],
        ['workers/protocol.ts', 'export interface Answer {}'],
        ['workers/answer.ts', 'export interface Asked {}\nexport const answer = 1;'],
        ['workers/geometry.worker.ts', "import './answer.ts';"],
        ['src/app/store.ts', 'export const store = 1;'],
        ['public/starters/small.json', ''],
        [file, source],
      ]),
    );

  test.each<[string, string, string, string]>([
    [
      'a kernel in a pure room',
      'src/trade/a.ts',
      "import 'replicad';",
      'replicad belongs to models/kernel alone',
    ],
    [
      'a part of a package outside its home',
      'models/solid/a.ts',
      "import init from 'replicad-opencascadejs/multi';",
      'replicad-opencascadejs belongs to models/kernel alone',
    ],
    [
      "a .wasm's address outside its home",
      'workers/a.ts',
      "import url from 'replicad-opencascadejs/wasm?url';",
      'replicad-opencascadejs belongs to models/kernel alone',
    ],
    [
      'any package in a pure room',
      'models/surface/a.ts',
      "import 'fflate';",
      'models/surface may import no package',
    ],
    [
      'another package in the design',
      'src/design/a.ts',
      "import 'fflate';",
      'src/design may import no package but fraction.js',
    ],
    [
      'the mesh kernel in the solid',
      'models/solid/a.ts',
      "import 'manifold-3d';",
      'manifold-3d belongs to models/draft alone',
    ],
    ['React outside the app', 'src/sheets/a.tsx', "import 'react';", 'react belongs to src/app alone'],
    [
      'three in the app outside its viewport',
      'src/app/form/a.tsx',
      "import { Mesh } from 'three';",
      'three belongs to src/app/viewport alone',
    ],
    [
      'Node outside the command line',
      'models/kernel/a.ts',
      "import 'node:fs';",
      'Node belongs to src/cli alone',
    ],
    ['Node by its bare name', 'src/files/a.ts', "import 'fs';", 'Node belongs to src/cli alone'],
    [
      'a value from the design in a curve',
      'models/curves/a.ts',
      "import { type Design, format } from '../../src/design/design.ts';",
      'models/curves may read types of src/design, src/design/problem.ts',
    ],
    [
      'a re-export',
      'models/curves/a.ts',
      "export * from '../surface/heights.ts';",
      'models/curves may read types of src/design',
    ],
    [
      'a type named in passing',
      'src/design/a.ts',
      "export type A = import('../../models/surface/heights.ts').A;",
      'src/design may read src/trade, models/curves',
    ],
    [
      'a surface that leans on the solid',
      'models/surface/a.ts',
      "import '../solid/bridge.ts';",
      'models/surface may read models/curves, src/design',
    ],
    [
      'a draft that leans on the surface',
      'models/draft/a.ts',
      "import '../surface/heights.ts';",
      'models/draft may read models/curves, models/mesh, src/design',
    ],
    [
      'the solid in the app, asked for late',
      'src/app/a.ts',
      "export const load = () => import('../../models/solid/bridge.ts');",
      'src/app may read src/design',
    ],
    [
      'the kernel in the app, be it a type',
      'src/app/a.ts',
      "import type { Kernel } from '../../models/kernel/kernel.ts';",
      'src/app may read src/design',
    ],
    [
      "a worker's inside in the app",
      'src/app/a.ts',
      "import { answer } from '../../workers/answer.ts';",
      'src/app may read src/design',
    ],
    [
      'the address of what is no worker',
      'src/app/a.ts',
      "new Worker(new URL('../../workers/answer.ts', import.meta.url));",
      'src/app may read src/design',
    ],
    [
      'the app in the design',
      'src/design/a.ts',
      "import '../app/store.ts';",
      'src/design may read src/trade',
    ],
    ['a file that is not there', 'src/trade/a.ts', "import './gone.ts';", 'there is no such file'],
    ['a test in a room', 'src/trade/a.ts', "import '../../tests/a.ts';", 'there is no such file'],
    ['a file outside of every room', 'src/odd/a.ts', '', 'src/odd/a.ts lies in none of the rooms'],
  ])('%s', (_what, file, source, rule) => {
    const wrong = check(file, source);
    expect(wrong).toHaveLength(1);
    expect(wrong[0]).toContain(rule);
    expect(wrong[0]).toContain(file);
  });

  test('a cycle, through types too', () => {
    const wrong = wrongArrows(
      new Map([
        ['models/curves/a.ts', "import { b } from './b.ts';"],
        ['models/curves/b.ts', "import { c } from './c.ts';"],
        ['models/curves/c.ts', "import type { B } from './b.ts';"],
      ]),
    );
    expect(wrong).toEqual(['A cycle: models/curves/b.ts → models/curves/c.ts → models/curves/b.ts']);
  });

  test('an import that nobody can follow', () => {
    expect(() => check('src/app/a.ts', 'const a = (name: string) => import(name);')).toThrow(
      /not written out/,
    );
  });

  test.each([
    ['src/design/a.ts', "import Fraction from 'fraction.js'; import { woods } from '../trade/woods.ts';"],
    [
      'models/curves/a.ts',
      "import { type Design } from '../../src/design/design.ts'; import { DesignError } from '../../src/design/problem.ts'; import './outline.ts';",
    ],
    [
      'models/kernel/a.ts',
      "import init from 'replicad-opencascadejs/multi'; import url from 'replicad-opencascadejs/multi/wasm?url';",
    ],
    [
      'src/app/viewport/a.tsx',
      "import { Canvas } from '@react-three/fiber'; import 'three/addons/a.js'; import 'react';",
    ],
    [
      'src/app/a.ts',
      "import type { Asked } from '../../workers/answer.ts'; new Worker(new URL('../../workers/geometry.worker.ts', import.meta.url));",
    ],
    [
      'src/cli/a.ts',
      "import 'node:fs'; import '../../workers/answer.ts'; import '../../public/starters/small.json';",
    ],
  ])('nothing wrong with %s', (file, source) => {
    expect(check(file, source)).toEqual([]);
  });
});
