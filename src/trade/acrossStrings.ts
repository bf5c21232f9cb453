/**
 * A value at each string that goes linearly from the first string (treble) to the last (bass), by the strings' places,
 * mm. By place and not by count, so that the two strings of a course get nearly the same. Common practice: action is
 * given at the two outer strings.
 *
 * @throws RangeError when first and last string lie at one place
 */
export function acrossStrings(places: readonly number[], treble: number, bass: number): readonly number[] {
  const first = places[0];
  const last = places[places.length - 1];
  if (first === undefined || last === undefined || first === last) {
    throw new RangeError('a value across the strings needs two strings at different places');
  }
  return places.map((x) => treble + ((bass - treble) * (x - first)) / (last - first));
}
