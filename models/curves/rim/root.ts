/** Step or bracket at which a root is found, mm. */
const NARROW = 1e-10;

/**
 * Where a falling function passes zero near `start`: a bracket of at most `reach` to the side that the sign at `start`
 * points to, narrowed by false position (Illinois variant) from a first `guess`. Without a change of sign: the
 * bracket's far end.
 */
export function rootOfFalling(f: (x: number) => number, start: number, reach: number, guess: number): number {
  const first = f(start);
  if (Math.abs(first) < 1e-13) return start;
  const side = first > 0 ? 1 : -1;
  let [a, fa] = [start, first];
  let b = start + side * reach;
  let fb = f(b);
  if (fa * fb > 0) return b;
  let x = (guess - a) * side > 0 && (b - guess) * side > 0 ? guess : (a + b) / 2;
  for (let step = 0; step < 80; step++) {
    const fx = f(x);
    if (fx === 0) return x;
    if (fx * fb < 0) [a, fa] = [b, fb];
    else fa /= 2;
    [b, fb] = [x, fx];
    const next = b - (fb * (b - a)) / (fb - fa);
    if (Math.abs(next - x) < NARROW || Math.abs(b - a) < NARROW) return next;
    x = next;
  }
  return x;
}
