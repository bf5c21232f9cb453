/** The poles of one Bézier piece, and how far it strays from what it was fitted to. */
export interface Fitted {
  /** One a degree and one more; each as many numbers as the curve has coordinates. */
  readonly poles: readonly (readonly number[])[];
  readonly off: number;
}

/** Degrees tried in turn. The last is beyond what a quarter of a circle needs for a millionth of its radius. */
const DEGREES = [1, 3, 5, 8] as const;

/**
 * Where a piece is judged between two places it passes through, as shares of the way: not halfway alone, where a curve
 * that is odd about its middle meets any piece.
 */
const JUDGED = [0.4, 0.7] as const;

/**
 * One Bézier piece through a smooth curve from t = 0 to 1, of the least degree that strays less than `tolerance`, or
 * the best there is: its poles by interpolation at Chebyshev's points, both ends exact.
 */
export function fitBezier(curve: (t: number) => readonly number[], tolerance: number): Fitted {
  let best: Fitted | undefined;
  for (const degree of DEGREES) {
    const points = chebyshev(degree);
    const poles = polesThrough(points.map(curve));
    let off = 0;
    for (let k = 0; k < degree; k++) {
      const [from, to] = [points[k] as number, points[k + 1] as number];
      for (const share of JUDGED) {
        const between = from + share * (to - from);
        const [wanted, got] = [curve(between), bezierAt(poles, between)];
        off = Math.max(off, Math.hypot(...wanted.map((w, i) => w - (got[i] as number))));
      }
    }
    if (!best || off < best.off) best = { poles, off };
    if (off < tolerance) break;
  }
  return best as Fitted;
}

/** `degree` + 1 places from 0 to 1, crowded toward the ends, where interpolation would stray most. */
export function chebyshev(degree: number): readonly number[] {
  return Array.from({ length: degree + 1 }, (_, k) => (1 - Math.cos((Math.PI * k) / degree)) / 2);
}

/** Poles of the Bézier piece that passes through `values` at Chebyshev's places. */
export function polesThrough(values: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const first = values[0] as readonly number[];
  return inverse(values.length - 1).map((row) =>
    first.map((_, d) =>
      row.reduce((sum, w, k) => sum + w * ((values[k] as readonly number[])[d] as number), 0),
    ),
  );
}

/** A point of a Bézier piece, by de Casteljau's repeated halving. */
function bezierAt(poles: readonly (readonly number[])[], t: number): readonly number[] {
  let row = poles;
  while (row.length > 1) {
    row = row
      .slice(1)
      .map((q, i) => q.map((v, d) => t * v + (1 - t) * ((row[i] as readonly number[])[d] as number)));
  }
  return row[0] as readonly number[];
}

const inverses = new Map<number, readonly (readonly number[])[]>();

/** From values at Chebyshev's places to poles: the inverse of the Bernstein polynomials' values there (Gauss–Jordan). */
function inverse(degree: number): readonly (readonly number[])[] {
  const known = inverses.get(degree);
  if (known) return known;
  const n = degree + 1;
  const a = chebyshev(degree).map((t, row) => [
    ...Array.from({ length: n }, (_, i) => bernstein(degree, i, t)),
    ...Array.from({ length: n }, (_, column) => (column === row ? 1 : 0)),
  ]);
  for (let c = 0; c < n; c++) {
    // the largest in a column of Bernstein values at these places is on the diagonal: no exchange of rows is needed
    const pivot = a[c] as number[];
    const d = pivot[c] as number;
    for (let k = 0; k < 2 * n; k++) pivot[k] = (pivot[k] as number) / d;
    for (const row of a) {
      const f = row[c] as number;
      if (row !== pivot && f !== 0)
        row.forEach((v, k) => {
          row[k] = v - f * (pivot[k] as number);
        });
    }
  }
  const out = a.map((row) => row.slice(n));
  inverses.set(degree, out);
  return out;
}

function bernstein(degree: number, i: number, t: number): number {
  let choose = 1;
  for (let k = 0; k < i; k++) choose = (choose * (degree - k)) / (k + 1);
  return choose * t ** i * (1 - t) ** (degree - i);
}
