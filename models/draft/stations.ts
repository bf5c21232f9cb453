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
 * Places strictly between `from` and `to`, ascending, that satisfy all wishes: each has a column within a third of its
 * room, so that its own spacing hardly grows. Of two wishes that near to one another the finer one is kept.
 */
export function stations(wishes: readonly Wish[], from: number, to: number): readonly number[] {
  const kept: Kept[] = [{ x: from, room: 0, until: from }];
  const inside = wishes
    .filter((w) => w.x > from + LEAST_GAP && w.x < to - LEAST_GAP)
    .sort((a, b) => a.x - b.x);
  for (const { x, room } of [...inside, { x: to, room: 0 }]) {
    let until = x + room / 3;
    let last = kept[kept.length - 1] as Kept;
    while (kept.length > 1 && last.room >= room && x <= Math.max(last.until, last.x + LEAST_GAP)) {
      until = Math.min(until, last.until);
      kept.pop();
      last = kept[kept.length - 1] as Kept;
    }
    if (x - last.x >= Math.max(LEAST_GAP, room / 3)) kept.push({ x, room, until });
  }
  return kept.slice(1, -1).map((w) => w.x);
}

interface Kept extends Wish {
  /** Up to where a finer wish may take its place, for its own sake and that of those whose place it took. */
  readonly until: number;
}
