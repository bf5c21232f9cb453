/**
 * The length of slot that each string has to itself, mm: half the way to each neighbour. An outermost string has as much
 * outward as inward, but no more than there is up to the slot's end.
 *
 * @param places of the strings along the slot from its middle, mm, rising or falling
 * @param halfLength of the slot, mm
 */
export function slotShares(places: readonly number[], halfLength: number): readonly number[] {
  return places.map((u, i) => {
    const [before, after] = [places[i - 1], places[i + 1]];
    const half = (next: number | undefined) => (next === undefined ? undefined : Math.abs(next - u) / 2);
    const toEnd = Math.max(0, halfLength - Math.abs(u));
    const [a, b] = [half(before), half(after)];
    return (a ?? Math.min(toEnd, b ?? toEnd)) + (b ?? Math.min(toEnd, a ?? toEnd));
  });
}
