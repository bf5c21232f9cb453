/** A place along x at which a column of points is wanted. */
export interface Wish {
  readonly x: number;
  /** Distance to the nearest neighbour that wants a column for the same reason, mm; 0: this one must be kept. */
  readonly room: number;
}

/** Columns nearer than this are one, mm: the mesh kernel works in single precision. */
const LEAST_GAP = 1e-4;

/** Wishes of one curve at the given places, which ascend. */
export function wishesAt(places: readonly number[]): readonly Wish[] {
  return places.map((x, i) => ({
    x,
    room: Math.min(
      x - (places[i - 1] ?? Number.NEGATIVE_INFINITY),
      (places[i + 1] ?? Number.POSITIVE_INFINITY) - x,
    ),
  }));
}

/**
 * Places strictly between `from` and `to` that satisfy all wishes, ascending. A wish is dropped when another's column
 * stands so near that its own spacing hardly grows.
 */
export function stations(wishes: readonly Wish[], from: number, to: number): readonly number[] {
  const kept: Wish[] = [{ x: from, room: 0 }];
  const inside = wishes
    .filter((w) => w.x > from + LEAST_GAP && w.x < to - LEAST_GAP)
    .sort((a, b) => a.x - b.x);
  for (const wish of [...inside, { x: to, room: 0 }]) {
    let last = kept[kept.length - 1] as Wish;
    while (last.room >= wish.room && wish.x - last.x < Math.max(LEAST_GAP, last.room / 3)) {
      if (kept.length === 1) break;
      kept.pop();
      last = kept[kept.length - 1] as Wish;
    }
    if (wish.x - last.x >= Math.max(LEAST_GAP, wish.room / 3)) kept.push(wish);
  }
  return kept.slice(1, -1).map((w) => w.x);
}
