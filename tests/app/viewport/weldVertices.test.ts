import { expect, test } from 'vitest';
import { weldVertices } from '../../../src/app/viewport/weldVertices.ts';
import { block, partMesh } from './partMesh.ts';

test('the 36 corners of a block’s 12 triangles are 8 places', () => {
  const mesh = partMesh(block());
  expect(mesh.positions.length / 3).toBe(36);
  expect(new Set(weldVertices(mesh.positions)).size).toBe(8);
});

test('places that differ in the last bit are one, wherever they lie; places 1 µm apart are two', () => {
  for (let i = -2000; i < 2000; i++) {
    const x = i * 0.0064;
    const pair = (dx: number) => weldVertices(new Float32Array([x, 70, -x, x + dx, 70, -x]));
    expect([...pair(1e-5)], `twins at x = ${x}`).toEqual([0, 0]);
    expect([...pair(1e-3)], `neighbours at x = ${x}`).toEqual([0, 1]);
  }
});
