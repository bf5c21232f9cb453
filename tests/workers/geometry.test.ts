import { afterAll, beforeAll, expect, test } from 'vitest';
import { Scope } from '../../models/kernel/scope.ts';
import type { DesignText } from '../../src/design/design.ts';
import { DesignError } from '../../src/design/problem.ts';
import type { Geometry } from '../../workers/geometry.ts';
import { loadGeometry } from '../../workers/loadGeometry.ts';
import { designText } from '../support/change.ts';

let geometry: Geometry;
beforeAll(async () => {
  geometry = await loadGeometry(false);
});
afterAll(() => geometry.dispose());

const chamfered = (thickness: number): DesignText => {
  const design = designText();
  return { ...design, top: { ...design.top, edge: 'chamfer', thickness } };
};

test('a solid that is no longer wanted stops at its next pause, and the next one is whole', async () => {
  let reads = 0;
  const signal = {
    get abandoned() {
      reads += 1;
      return reads === 2;
    },
  };
  await expect(geometry.solid(chamfered(9.4), 'drilled', signal)).rejects.toThrow('abandoned');
  expect(reads, 'nothing may be built after the build was abandoned').toBe(2);
  const { figures } = await geometry.solid(chamfered(9.4), 'drilled');
  expect(figures).toMatchObject({ valid: true, throughHoles: 6 });
});

test('a warm-up builds through, and can be abandoned', async () => {
  await expect(geometry.warmUp({ abandoned: true })).rejects.toThrow('abandoned');
  await expect(geometry.warmUp({ abandoned: false })).resolves.toBeUndefined();
});

test('a design that cannot be made never reaches the kernel', async () => {
  const before = Scope.live;
  const design = { ...chamfered(9.5), saddle: { ...designText().saddle, length: 180 } };
  for (const asked of [
    geometry.solid(design, 'drilled'),
    geometry.file(design, { format: 'step', holes: 'drilled' }),
  ]) {
    await expect(asked).rejects.toThrow(DesignError);
  }
  expect(Scope.live).toBe(before);
});

test.each([0, -1, 1e-9, 2, Number.NaN, Number.POSITIVE_INFINITY])(
  'an STL deviation of %f mm is refused',
  async (deviationMm) => {
    const asked = geometry.file(chamfered(9.5), { format: 'stl', holes: 'drilled', deviationMm });
    await expect(asked).rejects.toMatchObject({
      problems: [{ code: 'out-of-range', allowed: '0.001 to 1 mm' }],
    });
  },
);

test('an STL file says its deviation and is finer for a smaller one', async () => {
  const sizes: number[] = [];
  for (const deviationMm of [0.2, 0.02]) {
    const { name, bytes } = await geometry.file(chamfered(9.5), {
      format: 'stl',
      holes: 'drilled',
      deviationMm,
    });
    expect(name).toContain(String(deviationMm));
    sizes.push(bytes.length);
  }
  expect(sizes[1]).toBeGreaterThan(1.2 * (sizes[0] ?? 0));
});

test.each(['AP214', 'AP242'] as const)('a STEP file in %s says so', async (schema) => {
  const { name, bytes } = await geometry.file(chamfered(9.5), { format: 'step', holes: 'reamed', schema });
  expect(name).toMatch(/\.step$/);
  const header = new TextDecoder().decode(bytes).match(/FILE_SCHEMA\s*\(\(\s*'([^']*)'/)?.[1];
  // ISO 10303: AP214 calls its schema AUTOMOTIVE_DESIGN, AP242 AP242_MANAGED_MODEL_BASED_3D_ENGINEERING…
  expect(header).toContain(schema === 'AP214' ? 'AUTOMOTIVE_DESIGN' : 'AP242');
});
