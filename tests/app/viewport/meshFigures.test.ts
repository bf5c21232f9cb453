import { expect, test } from 'vitest';
import { boxOf, meshVolume } from '../../../src/app/viewport/meshFigures.ts';
import { BLOCK, block, partMesh, slottedBlock } from './partMesh.ts';

test('a block holds length × depth × height, and less when it faces inward', () => {
  const mesh = partMesh(block());
  expect(meshVolume(mesh)).toBeCloseTo(BLOCK.length * BLOCK.depth * BLOCK.height, 6);
  expect(meshVolume({ ...mesh, triangles: mesh.triangles.toReversed() })).toBeCloseTo(-18000, 6);
});

test('a slotted and drilled block holds what another mesh kernel says', () => {
  const solid = slottedBlock();
  expect(meshVolume(partMesh(solid))).toBeCloseTo(solid.volume(), 3);
});

test('the box touches the outermost points, and is a point when there are none', () => {
  expect(boxOf(partMesh(slottedBlock()).positions)).toEqual([-30, -15, 0, 30, 15, 10]);
  expect(boxOf(new Float32Array(0))).toEqual([0, 0, 0, 0, 0, 0]);
});
