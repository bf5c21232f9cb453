import { expect, test } from 'vitest';
import { heightGrid } from '../../../src/app/viewport/heightGrid.ts';
import { boxOf } from '../../../src/app/viewport/meshFigures.ts';
import { shadeMap } from '../../../src/app/viewport/shadeMap.ts';
import { BLOCK, HOLE, partMesh, SLOT, slottedBlock } from './partMesh.ts';

const { positions, triangles } = partMesh(slottedBlock());
const box = boxOf(positions);

test('the grid holds the top’s height: crown, slot’s floor, nothing in the hole or beside the part', () => {
  const grid = heightGrid(positions, triangles, box, 0.5, 5);
  const at = (x: number, y: number) =>
    grid.top[Math.floor((y - grid.yMin) / 0.5) * grid.columns + Math.floor((x - grid.xMin) / 0.5)];
  expect(at(-20, -8)).toBeCloseTo(BLOCK.height, 5);
  expect(at(5, SLOT.y)).toBeCloseTo(BLOCK.height - SLOT.depth, 5);
  expect(at(HOLE.x, HOLE.y)).toBeLessThan(0);
  expect(at(33, 0)).toBeLessThan(0);
});

test('no cell falls between two triangles', () => {
  const grid = heightGrid(positions, triangles, box, 0.25, 0);
  const bare = grid.top.filter((z) => z < 0).length * 0.25 ** 2;
  // The only bare ground is the hole at its narrowest.
  expect(bare).toBeGreaterThan(Math.PI * HOLE.below ** 2 * 0.93);
  expect(bare).toBeLessThan(Math.PI * HOLE.below ** 2 * 1.07);
});

test('slot and hole are filled to their lips, the outside is not', () => {
  const { data, columns, rows, plan } = shadeMap(positions, triangles, box);
  const cell = (x: number, y: number) => {
    const [i, j] = [((x - plan[0]) / plan[2]) * columns, ((y - plan[1]) / plan[3]) * rows];
    return 4 * (Math.floor(j) * columns + Math.floor(i));
  };
  for (const [x, y] of [
    [0, SLOT.y],
    [HOLE.x, HOLE.y],
    [-25, -10],
  ] as const) {
    expect(data[cell(x, y)], `filled height at ${x}, ${y}`).toBe(255);
    expect(data[cell(x, y) + 3], `cover far about ${x}, ${y}`).toBeGreaterThan(150);
  }
  expect(data[cell(34, 0)], 'beside the part').toBe(0);
  expect(data[cell(0, SLOT.y) + 1], 'blurred height over the slot').toBeLessThan(240);
  expect(data[0 + 3], 'the far shadow ends within the map').toBeLessThan(3);
});
