/*
 * The vibrating stiff string as a matrix eigenproblem, a road of its own beside the formulas: with lengths in units of
 * the string's and b² = EI/(TL²), the shape y(x) obeys b²·y'''' − y'' = λ·y, and √λ/π is what stiffness multiplies the
 * flexible string's fundamental by. Cubic Hermite elements (textbook beam elements), graded into the ends, where a
 * clamped string bends within a length b.
 */

export type End = 'pinned' | 'clamped';

type Matrix = readonly Float64Array[];

const zeros = (n: number): Float64Array[] => Array.from({ length: n }, () => new Float64Array(n));
const at = (m: Matrix, i: number, j: number): number => m[i]?.[j] ?? Number.NaN;

/** √λ/π of the mode whose λ is nearest to `near` times π², for a string between two ends. */
export function stiffStringRatio(b: number, ends: readonly [End, End], near = 0): number {
  const { stiffness, mass } = assembled(b, ends);
  const shift = near * Math.PI ** 2;
  const solve = eliminated(stiffness.map((row, i) => row.map((value, j) => value - shift * at(mass, i, j))));
  let shape: Float64Array = Float64Array.from(stiffness, (_, i) => 1 + Math.sin(i * i));
  let lambda = 0;
  for (let step = 0; step < 60; step++) {
    const next = solve(times(mass, shape));
    const size = Math.sqrt(dot(next, times(mass, next)));
    shape = next.map((value) => value / size);
    const found = dot(shape, times(stiffness, shape));
    if (Math.abs(found - lambda) < 1e-13 * found) break;
    lambda = found;
  }
  return Math.sqrt(lambda) / Math.PI;
}

/** Places of the nodes from 0 to 1: elements of b/6 at the ends, each 1.2 times the one before, up to 1/60. */
function nodes(b: number): number[] {
  const half = [0];
  let [end, h] = [0, b / 6];
  while (end < 0.5) {
    end += h;
    half.push(end);
    h = Math.min(1.2 * h, 1 / 60);
  }
  const scale = 0.5 / end;
  const left = half.map((x) => x * scale);
  return [
    ...left,
    ...left
      .slice(0, -1)
      .map((x) => 1 - x)
      .reverse(),
  ];
}

function assembled(b: number, ends: readonly [End, End]) {
  const x = nodes(b);
  const size = 2 * x.length;
  const [stiffness, mass] = [zeros(size), zeros(size)];
  for (let e = 0; e + 1 < x.length; e++) {
    const h = (x[e + 1] ?? 0) - (x[e] ?? 0);
    const { k, m } = element(h, b);
    for (const [i, row] of k.entries()) {
      for (const [j, value] of row.entries()) {
        const [r, c] = [2 * e + i, 2 * e + j];
        (stiffness[r] ?? row)[c] = at(stiffness, r, c) + value;
        (mass[r] ?? row)[c] = at(mass, r, c) + (m[i]?.[j] ?? Number.NaN);
      }
    }
  }
  // an end doesn't move; a clamped one doesn't turn either
  const held = new Set([0, size - 2]);
  if (ends[0] === 'clamped') held.add(1);
  if (ends[1] === 'clamped') held.add(size - 1);
  const free = Array.from({ length: size }, (_, i) => i).filter((i) => !held.has(i));
  const kept = (m: Matrix) => free.map((i) => Float64Array.from(free, (j) => at(m, i, j)));
  return { stiffness: kept(stiffness), mass: kept(mass) };
}

/** Matrices of one element of length h over deflection and slope at its two ends: bending and tension, and mass. */
function element(h: number, b: number) {
  const symmetric = (a: number, c: number, d: number, e: number, f: number, g: number) => [
    [a, c * h, d, e * h],
    [c * h, f * h * h, -e * h, g * h * h],
    [d, -e * h, a, -c * h],
    [e * h, g * h * h, -c * h, f * h * h],
  ];
  const bend = symmetric(12, 6, -12, 6, 4, 2);
  const pull = symmetric(36, 3, -36, 3, 4, -1);
  const k = bend.map((row, i) =>
    row.map((value, j) => (value * b * b) / h ** 3 + (pull[i]?.[j] ?? Number.NaN) / (30 * h)),
  );
  const m = symmetric(156, 22, 54, -13, 4, -3).map((row) => row.map((value) => (value * h) / 420));
  return { k, m };
}

const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
const times = (m: Matrix, v: Float64Array) => Float64Array.from(m, (row) => dot(row, v));

/** Solves with one matrix for many right-hand sides: Gauss's elimination with pivots by rows. */
function eliminated(matrix: Float64Array[]): (right: Float64Array) => Float64Array {
  const n = matrix.length;
  const order = Array.from({ length: n }, (_, i) => i);
  const rows = matrix.map((row) => Float64Array.from(row));
  for (let c = 0; c < n; c++) {
    let pivot = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(at(rows, r, c)) > Math.abs(at(rows, pivot, c))) pivot = r;
    swap(rows, c, pivot);
    swap(order, c, pivot);
    const top = rows[c] ?? new Float64Array();
    for (const row of rows.slice(c + 1)) {
      const factor = (row[c] ?? 0) / (top[c] ?? 0);
      row[c] = factor;
      if (factor !== 0) for (let j = c + 1; j < n; j++) row[j] = (row[j] ?? 0) - factor * (top[j] ?? 0);
    }
  }
  return (right) => {
    const x = Float64Array.from(order, (i) => right[i] ?? 0);
    for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) x[i] = (x[i] ?? 0) - at(rows, i, j) * (x[j] ?? 0);
    for (let i = n - 1; i >= 0; i--) {
      for (let j = i + 1; j < n; j++) x[i] = (x[i] ?? 0) - at(rows, i, j) * (x[j] ?? 0);
      x[i] = (x[i] ?? 0) / at(rows, i, i);
    }
    return x;
  };
}

function swap<T>(list: T[], i: number, j: number): void {
  const [a, b] = [list[i], list[j]];
  if (a === undefined || b === undefined) return;
  list[i] = b;
  list[j] = a;
}
