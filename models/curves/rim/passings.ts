/** Least length to which a passing is narrowed down, mm. */
const NARROW = 1e-11;

/**
 * Where a function passes a level: between the places of a walk at which it lies on either side, narrowed by halving.
 * Two passings between neighbouring places go unseen.
 *
 * @param walk rising; the function is sampled there once, for all levels
 */
export function passings(
  f: (s: number) => number,
  walk: readonly number[],
): (level: number) => readonly number[] {
  const samples = walk.map(f);
  return (level) =>
    samples.slice(1).flatMap((after, i) => {
      const below = (samples[i] as number) < level;
      if (below === after < level) return [];
      let [a, b] = [walk[i] as number, walk[i + 1] as number];
      while (b - a > NARROW) {
        const middle = (a + b) / 2;
        if (f(middle) < level === below) a = middle;
        else b = middle;
      }
      return [b];
    });
}
