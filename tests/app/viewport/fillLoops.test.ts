import { expect, test } from 'vitest';
import { type Filled, fillLoops } from '../../../src/app/viewport/fillLoops.ts';
import { type CutPoint, type Loop, loopArea, sliceMesh } from '../../../src/app/viewport/sliceMesh.ts';
import { weldVertices } from '../../../src/app/viewport/weldVertices.ts';
import { partMesh, slottedBlock } from './partMesh.ts';

function filledArea({ points, triangles }: Filled): number {
  let sum = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    const corners = [0, 1, 2].map((k) => points[triangles[i + k] as number] as CutPoint);
    const area = loopArea(corners);
    expect(area, `triangle ${i / 3} is turned over`).toBeGreaterThanOrEqual(-1e-9);
    sum += area;
  }
  return sum;
}

const square = (half: number): Loop => [
  [-half, -half],
  [half, -half],
  [half, half],
  [-half, half],
];
const hole = (half: number) => square(half).toReversed();

test('wood in a hole in wood: each hole is taken from the wood around it', () => {
  const filled = fillLoops([hole(8), square(3), square(10), hole(1)]);
  expect(filledArea(filled)).toBeCloseTo(400 - 256 + 36 - 4, 9);
  const middles = filled.triangles.length / 3;
  expect(middles).toBe(16);
});

test.each(['x', 'y', 'z'] as const)('the face of a cut across %s has the area its loops enclose', (axis) => {
  const { positions, triangles } = partMesh(slottedBlock());
  const welded = weldVertices(positions);
  for (const at of [-14.9, -6, 1e-3, 4.4, 7, 9.99]) {
    const loops = sliceMesh(positions, triangles, welded, axis, at);
    const enclosed = loops.reduce((sum, loop) => sum + loopArea(loop), 0);
    expect(filledArea(fillLoops(loops)), `across ${axis} at ${at}`).toBeCloseTo(enclosed, 6);
  }
});

test('nothing fills nothing', () => {
  expect(fillLoops([])).toEqual({ points: [], triangles: [] });
});
