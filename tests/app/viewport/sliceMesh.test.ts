import { expect, test } from 'vitest';
import { type Axis, cutToSpace, loopArea, sliceMesh } from '../../../src/app/viewport/sliceMesh.ts';
import { weldVertices } from '../../../src/app/viewport/weldVertices.ts';
import type { PartMesh } from '../../../workers/protocol.ts';
import { BLOCK, ball, HOLE, partMesh, SLOT, slottedBlock } from './partMesh.ts';

const slice = (mesh: PartMesh, axis: Axis, at: number) =>
  sliceMesh(mesh.positions, mesh.triangles, weldVertices(mesh.positions), axis, at);
const area = (mesh: PartMesh, axis: Axis, at: number) =>
  slice(mesh, axis, at).reduce((sum, loop) => sum + loopArea(loop), 0);

const part = partMesh(slottedBlock());
const welded = weldVertices(part.positions);

test('across z: the block less the slot less the hole, as closed forms', () => {
  const loops = slice(part, 'z', 7);
  expect(loops.length, 'outside, slot and hole').toBe(3);
  expect(loops.map((loop) => Math.sign(loopArea(loop))).sort()).toEqual([-1, -1, 1]);
  const radius = HOLE.below + ((HOLE.above - HOLE.below) * 7) / BLOCK.height;
  const hole = (HOLE.sides / 2) * radius ** 2 * Math.sin((2 * Math.PI) / HOLE.sides);
  expect(area(part, 'z', 7)).toBeCloseTo(60 * 30 - SLOT.length * SLOT.width - hole, 3);
});

test('across x through the hole’s middle: the slot is 3 × 6, the hole a trapezium', () => {
  const gone = SLOT.width * SLOT.depth + (HOLE.below + HOLE.above) * BLOCK.height;
  expect(slice(part, 'x', HOLE.x).length, 'the hole parts the wood in two').toBe(2);
  expect(area(part, 'x', HOLE.x)).toBeCloseTo(30 * 10 - gone, 3);
});

test('across y the loops turn the same way as across x and z', () => {
  const loops = slice(part, 'y', 0);
  expect(loops.length).toBe(1);
  expect(area(part, 'y', 0)).toBeCloseTo(600, 3);
});

test.each(['x', 'y', 'z'] as const)('areas of thin slices across %s add up to the volume', (axis) => {
  const solid = slottedBlock();
  const size = { x: BLOCK.length, y: BLOCK.depth, z: BLOCK.height }[axis];
  const low = axis === 'z' ? 0 : -size / 2;
  const slices = 600;
  let volume = 0;
  for (let i = 0; i < slices; i++)
    volume += (area(part, axis, low + ((i + 0.5) * size) / slices) * size) / slices;
  expect(Math.abs(volume / solid.volume() - 1), `sum ${volume}, kernel ${solid.volume()}`).toBeLessThan(2e-4);
});

test('a cut exactly through vertices and along faces still closes', () => {
  expect(
    area(part, 'z', BLOCK.height - SLOT.depth),
    'on the slot’s floor, which counts as above',
  ).toBeCloseTo(area(part, 'z', BLOCK.height - SLOT.depth - 1e-4), 1);
  expect(slice(part, 'z', 0), 'below the wood').toEqual([]);
  expect(area(part, 'z', 10), 'on the top face').toBeCloseTo(area(part, 'z', 10 - 1e-4), 1);
});

test('a hollow ball: wood between two rings', () => {
  const loops = slice(partMesh(ball(10, 6)), 'x', 1);
  expect(loops.map((loop) => loopArea(loop) > 0).sort()).toEqual([false, true]);
});

test('a mesh with a gap is closed by the chord: in a flat face nothing is lost', () => {
  const gap = part.triangles.slice(3);
  for (const at of [-29, -10, 0, 11, 29]) {
    const open = sliceMesh(part.positions, gap, welded, 'x', at).reduce(
      (sum, loop) => sum + loopArea(loop),
      0,
    );
    expect(open, `across x at ${at}`).toBeCloseTo(area(part, 'x', at), 6);
  }
  expect(slice({ ...part, triangles: gap }, 'x', 0).length).toBe(slice(part, 'x', 0).length);
});

test('points of a cut find their way back to space', () => {
  expect(cutToSpace('x', 5, [1, 2])).toEqual([5, 1, 2]);
  expect(cutToSpace('y', 5, [1, 2])).toEqual([1, 5, 2]);
  expect(cutToSpace('z', 5, [1, 2])).toEqual([1, 2, 5]);
});
