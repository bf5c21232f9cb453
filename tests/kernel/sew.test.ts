import { beforeAll, expect, test } from 'vitest';
import type { Face, Kernel } from '../../models/kernel/kernel.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { volumeOf } from '../../models/kernel/measure.ts';
import { type Scope, scoped } from '../../models/kernel/scope.ts';
import { sew } from '../../models/kernel/sew.ts';
import { closedPath, face } from '../../models/kernel/shapes.ts';
import type { Vector } from '../../models/kernel/vectors.ts';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel({ threads: false });
});

/** The six sides of a block of 4 × 3 × 2. */
function sides(scope: Scope): readonly Face[] {
  const rectangle = (a: number, b: number) =>
    closedPath([
      [0, 0],
      [a, 0],
      [a, b],
      [0, b],
    ]);
  const side = (a: number, b: number, place: (p: readonly [number, number]) => Vector) =>
    face(kernel, scope, rectangle(a, b), place);
  return [0, 1].flatMap((far) => [
    side(4, 3, ([x, y]) => [x, y, 2 * far]),
    side(3, 2, ([y, z]) => [4 * far, y, z]),
    side(2, 4, ([z, x]) => [x, 3 * far, z]),
  ]);
}

// One of the two shells comes out of the sewing looking inward: which one is the kernel's business.
test.each([false, true])(
  'a block whose faces are turned over (%s) is a solid that looks outward',
  (turned) => {
    scoped((scope) => {
      const given = sides(scope).map((one) =>
        turned ? scope.own(kernel.oc.TopoDS.Face(scope.own(one.Reversed()))) : one,
      );
      const solid = sew(kernel, scope, given);
      expect(solid.Orientation(), 'no mark on the solid').toBe('TopAbs_FORWARD');
      expect(volumeOf(kernel, solid).volume, 'its faces look outward').toBeCloseTo(24, 9);
    });
  },
);

test('a block without its lid is refused', () => {
  scoped((scope) => {
    const open = sides(scope).slice(1);
    expect(() => sew(kernel, scope, open)).toThrow(/leave 4 seams open/);
  });
});
