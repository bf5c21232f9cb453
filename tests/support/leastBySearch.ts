const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a function of one number with a single valley is least, by golden sections of low…high. */
export function leastOf(f: (x: number) => number, low: number, high: number, tolerance = 1e-7): number {
  let [a, b] = [low, high];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [atC, atD] = [f(c), f(d)];
  while (b - a > tolerance) {
    if (atC < atD) {
      [b, d, atD] = [d, c, atC];
      c = b - GOLDEN * (b - a);
      atC = f(c);
    } else {
      [a, c, atC] = [c, d, atD];
      d = a + GOLDEN * (b - a);
      atD = f(d);
    }
  }
  return (a + b) / 2;
}

/** Where a function of two numbers with a single valley is least: golden sections within golden sections. */
export function leastOfTwo(
  f: (x: number, y: number) => number,
  xs: readonly [number, number],
  ys: readonly [number, number],
): readonly [number, number] {
  const bestY = (x: number) => leastOf((y) => f(x, y), ...ys);
  const x = leastOf((tried) => f(tried, bestY(tried)), ...xs);
  return [x, bestY(x)];
}
