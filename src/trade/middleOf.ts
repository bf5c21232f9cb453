/**
 * A value that is known at each string, on the guitar's centre line (x = 0): straight between the two strings that lie
 * to its sides, or the string's own that lies there. Places in mm, either hand; the value's unit is kept.
 *
 * @throws RangeError when all strings lie on one side
 */
export function middleOf(places: readonly number[], values: readonly number[]): number {
  for (let i = 0; i < places.length; i++) {
    const [x, v] = [places[i], values[i]];
    if (x === undefined || v === undefined) break;
    if (x === 0) return v;
    const [xNext, vNext] = [places[i + 1], values[i + 1]];
    if (xNext === undefined || vNext === undefined) break;
    if (x * xNext < 0) return v + ((vNext - v) * x) / (x - xNext);
  }
  throw new RangeError('no two neighbouring strings lie to both sides of the centre line');
}
