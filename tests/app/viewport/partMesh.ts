import Module, { type Manifold } from 'manifold-3d';
import type { PartMesh } from '../../../workers/protocol.ts';

const wasm = await Module();
wasm.setup();
const { Manifold: Solid } = wasm;

/** 60 × 30 × 10 mm on z = 0, centred in plan; a slot, and a hole that tapers, both by another mesh kernel. */
export const BLOCK = { length: 60, depth: 30, height: 10 };
export const SLOT = { length: 40, width: 3, depth: 6, y: 8 };
export const HOLE = { x: 12, y: -6, below: 2.4, above: 3.2, sides: 96 };

export function block(): Manifold {
  return Solid.cube([BLOCK.length, BLOCK.depth, BLOCK.height], true).translate([0, 0, BLOCK.height / 2]);
}

export function slottedBlock(): Manifold {
  const slot = Solid.cube([SLOT.length, SLOT.width, 2 * SLOT.depth], true).translate([
    0,
    SLOT.y,
    BLOCK.height,
  ]);
  const hole = Solid.cylinder(BLOCK.height, HOLE.below, HOLE.above, HOLE.sides).translate([
    HOLE.x,
    HOLE.y,
    0,
  ]);
  return block().subtract(slot).subtract(hole);
}

/** The slotted block with a string channel from the hole toward the slot, and the back edge chamfered behind the hole. */
export const CHANNEL = { length: 8, width: 1.6, depth: 1.5 };
export const CHAMFER = 2;
export function channelledBlock(): Manifold {
  const { length, width, depth } = CHANNEL;
  const channel = Solid.cube([width, length, 2 * depth], true).translate([
    HOLE.x,
    HOLE.y + length / 2,
    BLOCK.height,
  ]);
  const side = CHAMFER * Math.SQRT2;
  const corner = Solid.cube([20, side, side], true)
    .rotate([45, 0, 0])
    .translate([HOLE.x, -BLOCK.depth / 2, BLOCK.height]);
  return slottedBlock().subtract(channel).subtract(corner);
}

export function ball(radius: number, hollow: number): Manifold {
  return Solid.sphere(radius, 64).subtract(Solid.sphere(hollow, 48));
}

/** As a mesh comes for the screen: a vertex of its own for every corner of every triangle, edges where faces turn. */
export function partMesh(solid: Manifold): PartMesh {
  const { vertProperties, triVerts, numProp } = solid.getMesh();
  const corner = (index: number) => [0, 1, 2].map((k) => vertProperties[index * numProp + k] as number);
  const positions: number[] = [];
  const normals: number[] = [];
  const faces = new Map<string, number[]>();
  const edges: number[] = [];
  for (let i = 0; i < triVerts.length; i += 3) {
    const ids = [0, 1, 2].map((k) => triVerts[i + k] as number);
    const [a, b, c] = ids.map(corner) as [number[], number[], number[]];
    const normal = unitNormal(a, b, c);
    positions.push(...a, ...b, ...c);
    normals.push(...normal, ...normal, ...normal);
    for (let k = 0; k < 3; k++) {
      const [from, to] = [ids[k] as number, ids[(k + 1) % 3] as number];
      const other = faces.get(`${to} ${from}`);
      const turns =
        other && other.reduce((sum, value, axis) => sum + value * (normal[axis] as number), 0) < 0.9;
      if (turns) edges.push(...corner(from), ...corner(to));
      faces.set(`${from} ${to}`, normal);
    }
  }
  return {
    positions: new Float32Array(positions),
    normals: new Float32Array(normals),
    triangles: Uint32Array.from({ length: positions.length / 3 }, (_, i) => i),
    edges: new Float32Array(edges),
  };
}

function unitNormal(a: number[], b: number[], c: number[]): number[] {
  const at = (v: number[], k: number) => v[k % 3] as number;
  const normal = [0, 1, 2].map((k) => {
    const [i, j] = [k + 1, k + 2];
    return (at(b, i) - at(a, i)) * (at(c, j) - at(a, j)) - (at(b, j) - at(a, j)) * (at(c, i) - at(a, i));
  });
  const length = Math.hypot(...normal);
  return normal.map((value) => value / length);
}
