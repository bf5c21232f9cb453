/**
 * For each vertex (xyz triples, mm), the number of the first vertex at the same place. A mesh for the screen repeats a
 * vertex wherever its normal changes; welding makes it one closed surface again.
 *
 * @param tolerance mm; two roads to one point may differ in the last bit of a 32-bit number (1e-5 mm at 150 mm)
 */
export function weldVertices(positions: Float32Array, tolerance = 2e-4): Uint32Array {
  const cell = 64 * tolerance;
  const count = Math.floor(positions.length / 3);
  const welded = new Uint32Array(count);
  const firstIn = new Map<number, number>();
  const nextIn = new Int32Array(count).fill(-1);

  const at = (vertex: number, axis: number) => positions[3 * vertex + axis] as number;
  const near = (a: number, b: number) =>
    Math.abs(at(a, 0) - at(b, 0)) <= tolerance &&
    Math.abs(at(a, 1) - at(b, 1)) <= tolerance &&
    Math.abs(at(a, 2) - at(b, 2)) <= tolerance;

  const twinOf = (vertex: number): number => {
    const [x0, x1] = span(at(vertex, 0), cell, tolerance);
    const [y0, y1] = span(at(vertex, 1), cell, tolerance);
    const [z0, z1] = span(at(vertex, 2), cell, tolerance);
    for (let i = x0; i <= x1; i++)
      for (let j = y0; j <= y1; j++)
        for (let k = z0; k <= z1; k++)
          for (let other = firstIn.get(hash(i, j, k)) ?? -1; other >= 0; other = nextIn[other] as number)
            if (near(vertex, other)) return other;
    return -1;
  };

  for (let vertex = 0; vertex < count; vertex++) {
    const twin = twinOf(vertex);
    if (twin >= 0) {
      welded[vertex] = twin;
      continue;
    }
    welded[vertex] = vertex;
    const [i, j, k] = [0, 1, 2].map((axis) => Math.floor(at(vertex, axis) / cell)) as [
      number,
      number,
      number,
    ];
    const key = hash(i, j, k);
    nextIn[vertex] = firstIn.get(key) ?? -1;
    firstIn.set(key, vertex);
  }
  return welded;
}

/** The one or two cells along an axis in which a twin of `value` may lie. */
function span(value: number, cell: number, tolerance: number): [number, number] {
  return [Math.floor((value - tolerance) / cell), Math.floor((value + tolerance) / cell)];
}

/** Cells may share a number: the distance decides. */
function hash(i: number, j: number, k: number): number {
  return Math.imul(i, 73856093) ^ Math.imul(j, 19349663) ^ Math.imul(k, 83492791);
}
