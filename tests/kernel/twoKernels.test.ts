import { expect, test } from 'vitest';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { scoped } from '../../models/kernel/scope.ts';
import { closedPath, face, prism } from '../../models/kernel/shapes.ts';
import { writeStep } from '../../models/kernel/step.ts';

test('the first of two kernels still writes STEP', async () => {
  const first = await loadKernel({ threads: false });
  await loadKernel({ threads: false });
  const bytes = scoped((scope) => {
    const square = closedPath([
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ]);
    const base = face(first, scope, square, ([x, y]) => [x, y, 0]);
    return writeStep(first, prism(first, scope, base, [0, 0, 9]), 'block', 'AP214');
  });
  expect(new TextDecoder().decode(bytes)).toContain('MANIFOLD_SOLID_BREP');
});
