import { describe, expect, test } from 'vitest';
import { litEdges } from '../../../src/app/viewport/litEdges.ts';
import { boxOf } from '../../../src/app/viewport/meshFigures.ts';
import { BLOCK, CHAMFER, channelledBlock, HOLE, partMesh, SLOT, slottedBlock } from './partMesh.ts';

const mesh = partMesh(slottedBlock());
const box = boxOf(mesh.positions);

/** Length and middles of the lit edges. */
function lit(path: string, part = mesh) {
  const { lit: edges, plain } = litEdges(part, box, path);
  expect(edges.length + plain.length, 'every edge is drawn once').toBe(part.edges.length);
  const middles: [number, number, number][] = [];
  let length = 0;
  for (let i = 0; i < edges.length; i += 6) {
    const [a, b] = [edges.slice(i, i + 3), edges.slice(i + 3, i + 6)];
    length += Math.hypot(...a.map((value, k) => value - (b[k] as number)));
    middles.push([...a].map((value, k) => (value + (b[k] as number)) / 2) as [number, number, number]);
  }
  return { length, middles };
}

describe('which edges light up', () => {
  test('the saddle’s: both rims of the slot and its corners', () => {
    const { length, middles } = lit('saddle.slotWidth');
    for (const [, y] of middles) expect(Math.abs(y - SLOT.y)).toBeLessThanOrEqual(SLOT.width / 2 + 1e-4);
    expect(length).toBeCloseTo(2 * 2 * (SLOT.length + SLOT.width) + 4 * SLOT.depth, 3);
  });

  test('the pins’: both rims of the hole', () => {
    const { length, middles } = lit('pins');
    for (const [x, y] of middles) expect(Math.hypot(x - HOLE.x, y - HOLE.y)).toBeLessThan(HOLE.above + 1e-4);
    expect(length / (2 * Math.PI * (HOLE.below + HOLE.above))).toBeCloseTo(1, 2);
  });

  test('the footprint’s: the whole outline, above and below, and its corners; the underside’s: below alone', () => {
    const around = 2 * (BLOCK.length + BLOCK.depth);
    expect(lit('footprint.length').length).toBeCloseTo(2 * around + 4 * BLOCK.height, 3);
    expect(lit('underside').length).toBeCloseTo(around, 3);
  });

  test('a string channel is the pins’, an edge taken off behind the hole is the top’s', () => {
    const part = partMesh(channelledBlock());
    const pins = lit('pins.channelWidth', part).middles;
    expect(
      pins.filter(([, y]) => y > HOLE.y + HOLE.above + 0.5).length,
      'rims of the channel',
    ).toBeGreaterThan(0);
    expect(Math.min(...pins.map(([, y]) => y)), 'none behind the hole').toBeGreaterThan(
      HOLE.y - HOLE.above - 1e-3,
    );
    const upper = lit('top.edge', part).middles.filter(
      ([x, y]) => x === HOLE.x && Math.abs(y - CHAMFER + BLOCK.depth / 2) < 1e-3,
    );
    expect(upper.length, 'the chamfer’s upper edge').toBe(1);
  });

  test('the wing tip’s: those of the two ends, and no others of the top', () => {
    const { middles, length } = lit('top.tip');
    for (const [x] of middles) expect(Math.abs(x)).toBeGreaterThan(BLOCK.length / 2 - 4);
    // each end's face: its depth and its height twice
    expect(length).toBeCloseTo(2 * 2 * (BLOCK.depth + BLOCK.height), 3);
  });

  test('none for a group that has no edges of its own', () => {
    expect(lit('timber.density').length).toBe(0);
    expect(lit('top').length, 'a flat top').toBe(0);
  });
});
