/** Places and weights of Gauss–Legendre quadrature on 0 to 1. */
export interface Rule {
  readonly at: readonly number[];
  readonly weight: readonly number[];
}

const rules = new Map<number, Rule>();

/** The rule of `n` points, exact for polynomials of degree 2n − 1: roots of the Legendre polynomial by Newton's method. */
export function gauss(n: number): Rule {
  const known = rules.get(n);
  if (known) return known;
  const at: number[] = [];
  const weight: number[] = [];
  for (let i = n - 1; i >= 0; i--) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 20; step++) {
      let [before, now] = [1, x];
      for (let k = 2; k <= n; k++) [before, now] = [now, ((2 * k - 1) * x * now - (k - 1) * before) / k];
      slope = (n * (x * now - before)) / (x * x - 1);
      const move = now / slope;
      x -= move;
      if (Math.abs(move) < 1e-15) break;
    }
    at.push((1 + x) / 2);
    weight.push(1 / ((1 - x * x) * slope * slope));
  }
  const rule = { at, weight };
  rules.set(n, rule);
  return rule;
}

/** Visits the rule's places between `from` and `to` with their weights. */
export function between(
  from: number,
  to: number,
  rule: Rule,
  visit: (x: number, weight: number) => void,
): void {
  const span = to - from;
  for (let i = 0; i < rule.at.length; i++) {
    visit(from + span * (rule.at[i] as number), span * (rule.weight[i] as number));
  }
}

/**
 * As `between`, for what begins or ends like a square root, as a round end or a circle's chord does:
 * x = from + span·(1 − cos φ)/2 makes that smooth in φ.
 */
export function betweenRounded(
  from: number,
  to: number,
  rule: Rule,
  visit: (x: number, weight: number) => void,
): void {
  const span = to - from;
  for (let i = 0; i < rule.at.length; i++) {
    const phi = Math.PI * (rule.at[i] as number);
    const weight = (span / 2) * Math.sin(phi) * Math.PI * (rule.weight[i] as number);
    visit(from + (span * (1 - Math.cos(phi))) / 2, weight);
  }
}

/** Those of `breaks` inside `from` to `to`, in order, with both ends, none twice. */
export function panels(from: number, to: number, breaks: readonly number[]): readonly number[] {
  const inside = breaks.filter((b) => b > from && b < to).sort((a, b) => a - b);
  const out = [from];
  for (const b of [...inside, to]) if (b - (out[out.length - 1] as number) > 1e-9) out.push(b);
  return out;
}
