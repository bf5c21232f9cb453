/** Least distance between the middles of two labels beside each other, px. */
const LEAST = 21;

/** Which of some labels in a row can be read: the most wanted one, and each that stands clear of all that are kept. */
export function spacedLabels(
  places: readonly number[],
  wanted: number,
  least: number = LEAST,
): ReadonlySet<number> {
  const kept = new Set<number>();
  for (const i of [wanted, ...places.keys()]) {
    const place = places[i];
    const clear = [...kept].every((k) => Math.abs((places[k] ?? 0) - (place ?? 0)) >= least);
    if (place !== undefined && clear) kept.add(i);
  }
  return kept;
}
