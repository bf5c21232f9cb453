/** A stretch from its lower to its upper end, mm. */
export type Interval = readonly [number, number];

/** Stretches in rising order that don't touch. */
export type Intervals = readonly Interval[];

/** What is left of `all` when everything between `from` and `to` is taken away. */
export function without(all: Intervals, from: number, to: number): Intervals {
  if (!(to > from) || all.every(([a, b]) => b <= from || a >= to)) return all;
  const left: Interval[] = [];
  for (const [a, b] of all) {
    if (b <= from || a >= to) {
      left.push([a, b]);
      continue;
    }
    if (a < from) left.push([a, from]);
    if (b > to) left.push([to, b]);
  }
  return left;
}

/** What `all` has between `from` and `to`. */
export function within(all: Intervals, from: number, to: number): Intervals {
  const out: Interval[] = [];
  for (const [a, b] of all) {
    const [low, high] = [Math.max(a, from), Math.min(b, to)];
    if (high > low) out.push([low, high]);
  }
  return out;
}
