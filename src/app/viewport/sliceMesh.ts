/** x, y or z: what a cut is square to. */
export type Axis = 'x' | 'y' | 'z';

/** A point of a cut, mm: (y, z) in a cut across x, (x, z) across y, (x, y) across z. */
export type CutPoint = readonly [number, number];

/** A closed line: counter-clockwise in its own coordinates around wood, clockwise around a hole. */
export type Loop = readonly CutPoint[];

const AXES = { x: [0, 1, 2], y: [1, 0, 2], z: [2, 0, 1] } as const;

/**
 * Cuts a closed mesh by the plane `axis = at` (mm) into closed loops.
 *
 * A vertex on the plane counts as above it, so each triangle is crossed by two of its edges or by none, and the
 * crossings are chained by the edges they lie on, not by distance: the loops of a closed mesh always close. Where a mesh
 * has a gap, the chain is closed by its chord.
 *
 * @param welded from `weldVertices`
 */
export function sliceMesh(
  positions: Float32Array,
  triangles: Uint32Array,
  welded: Uint32Array,
  axis: Axis,
  at: number,
): Loop[] {
  const [across, first, second] = AXES[axis];
  const edgeOf = (a: number, b: number) => (a < b ? a * welded.length + b : b * welded.length + a);
  const above = (vertex: number) => (positions[3 * vertex + across] as number) >= at;

  const crossing = (edge: number): CutPoint => {
    const low = Math.floor(edge / welded.length);
    const high = edge - low * welded.length;
    const from = positions[3 * low + across] as number;
    const t = (at - from) / ((positions[3 * high + across] as number) - from);
    const between = (k: number) => {
      const start = positions[3 * low + k] as number;
      return start + t * ((positions[3 * high + k] as number) - start);
    };
    return [between(first), between(second)];
  };

  // Wood lies to the left of start → end, seen from the axis's positive end.
  const ends = new Map<number, number[]>();
  for (let i = 0; i + 2 < triangles.length; i += 3) {
    const corners = [0, 1, 2].map((k) => welded[triangles[i + k] as number] as number) as [
      number,
      number,
      number,
    ];
    let start = -1;
    let end = -1;
    for (let k = 0; k < 3; k++) {
      const a = corners[k] as number;
      const b = corners[(k + 1) % 3] as number;
      if (above(a) === above(b)) continue;
      if (above(a)) start = edgeOf(a, b);
      else end = edgeOf(a, b);
    }
    if (start < 0 || end < 0) continue;
    const known = ends.get(start);
    if (known) known.push(end);
    else ends.set(start, [end]);
  }

  const loops: Loop[] = [];
  const arrivals = new Set([...ends.values()].flat());
  const starts = [...ends.keys()];
  // Open chains first, from their beginnings, so that none is broken in two.
  for (const start of [...starts.filter((edge) => !arrivals.has(edge)), ...starts]) {
    while (ends.get(start)?.length) {
      const loop: CutPoint[] = [];
      for (let edge: number | undefined = start; edge !== undefined; edge = ends.get(edge)?.pop()) {
        loop.push(crossing(edge));
      }
      const clean = withoutRepeats(loop);
      // (x, z) seen from +y is left-handed.
      if (clean.length > 2) loops.push(axis === 'y' ? clean.reverse() : clean);
    }
  }
  return loops;
}

/** Drops points that repeat the one before them, the first at the end included. */
function withoutRepeats(loop: readonly CutPoint[]): CutPoint[] {
  const apart = (a: CutPoint, b: CutPoint) => Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) > 1e-7;
  return loop.filter((point, i) => apart(point, loop[(i + loop.length - 1) % loop.length] as CutPoint));
}

/** mm², positive for a counter-clockwise loop. */
export function loopArea(loop: Loop): number {
  let twice = 0;
  for (let i = 0; i < loop.length; i++) {
    const [ax, ay] = loop[i] as CutPoint;
    const [bx, by] = loop[(i + 1) % loop.length] as CutPoint;
    twice += ax * by - bx * ay;
  }
  return twice / 2;
}

/** The point of space that a cut's point stands for. */
export function cutToSpace(axis: Axis, at: number, [u, v]: CutPoint): [number, number, number] {
  if (axis === 'x') return [at, u, v];
  return axis === 'y' ? [u, at, v] : [u, v, at];
}
