/** Least distance between the middles of two labels beside each other, px. */
const LEAST = 21;

/** Which of some labels in a row can be read: the first, and each that stands clear of the last one kept. */
export function spacedLabels(places: readonly number[], least: number = LEAST): ReadonlySet<number> {
  const kept = new Set<number>();
  let last: number | undefined;
  for (const [i, place] of places.entries()) {
    if (last !== undefined && Math.abs(place - last) < least) continue;
    kept.add(i);
    last = place;
  }
  return kept;
}
