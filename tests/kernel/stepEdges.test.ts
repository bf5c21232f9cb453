import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Curves } from '../../models/curves/curves.ts';
import type { Kernel } from '../../models/kernel/kernel.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { scoped } from '../../models/kernel/scope.ts';
import { writeStep } from '../../models/kernel/step.ts';
import { body } from '../../models/solid/body.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { rounded, slab } from '../models/surface/slab.ts';
import { stepEdges } from '../support/stepEdges.ts';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel({ threads: false });
});

const edgesOf = (curves: Curves) =>
  stepEdges(
    new TextDecoder().decode(
      scoped((scope) => writeStep(kernel, body(kernel, scope, curves), 'body', 'AP214')),
    ),
  );
const starter = (name: string) =>
  acceptDesign(JSON.parse(readFileSync(`public/starters/${name}.json`, 'utf8'))).curves;

test.each(['plover', 'windrush', 'lapwing'])(
  '%s on a flat glue face: each arc of its outline is a CIRCLE',
  (name) => {
    const { outline, ...rest } = starter(name);
    const { circles } = edgesOf({ ...rest, outline, underside: { shape: 'flat' } });
    for (const piece of outline) {
      if (piece.kind === 'line') continue;
      const [x, y] = piece.centre;
      const found = circles.some(
        ({ centre: [cx = 0, cy = 0, cz = 0], radius }) =>
          Math.hypot(cx - x, cy - y, cz) < 1e-6 && Math.abs(radius - piece.radius) < 1e-6,
      );
      expect(found, `a CIRCLE of R ${piece.radius} round (${x}, ${y}, 0)`).toBe(true);
    }
  },
);

describe.each(['round', 'chamfer'] as const)('a level block with round corners and a %s edge', (kind) => {
  const read = () => edgesOf(slab(0, 0, 9, { outline: rounded(100, 30, 8), edge: { kind, size: 2 } }));

  test('has lines and circles alone', () => {
    // round foot, wall and top: 4 sides and 4 corners each; 8 uprights; across the edge 8 sections
    const across = kind === 'round' ? { LINE: 20, CIRCLE: 20 } : { LINE: 28, CIRCLE: 12 };
    expect(read().kinds).toEqual(across);
  });

  test('is rolled or flat along its walls', () => {
    // glue face, top and 4 walls are planes, 4 corners cylinders; the edge at the corners is a patch
    const along =
      kind === 'round' ? { PLANE: 6, CYLINDRICAL_SURFACE: 8 } : { PLANE: 10, CYLINDRICAL_SURFACE: 4 };
    expect(read().surfaces).toEqual({ ...along, B_SPLINE_SURFACE_WITH_KNOTS: 4 });
  });
});

test.each(['plover', 'windrush'])('%s: more than half of its edges are lines and circles', (name) => {
  const { kinds } = edgesOf(starter(name));
  const all = Object.values(kinds).reduce((sum, n) => sum + n, 0);
  expect((kinds.LINE ?? 0) + (kinds.CIRCLE ?? 0), JSON.stringify(kinds)).toBeGreaterThan(0.6 * all);
});
