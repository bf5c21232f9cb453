import { gauss, panels } from './gauss.ts';

/** A place along the bridge at which something was measured. */
interface Station {
  readonly x: number;
}

/**
 * ∫ of a function of x and of what stations tell, from one x to another, between stations by their straight line of
 * `told`. Gauss–Legendre with 3 points a step.
 *
 * @param stations x rising
 * @param told what changes evenly from station to station
 * @param stops further x at which `f` bends
 */
export function stretchIntegral<S extends Station>(
  stations: readonly S[],
  told: (station: S) => number,
  [from, to]: readonly [number, number],
  stops: readonly number[],
  f: (x: number, value: number) => number,
): number {
  const rule = gauss(3);
  let sum = 0;
  for (let i = 1; i < stations.length; i++) {
    const [a, b] = [stations[i - 1] as S, stations[i] as S];
    const [start, end] = [Math.max(from, a.x), Math.min(to, b.x)];
    if (end <= start) continue;
    const [value, rise] = [told(a), (told(b) - told(a)) / (b.x - a.x)];
    const ends = stops.some((x) => x > start && x < end) ? panels(start, end, stops) : [start, end];
    for (let k = 1; k < ends.length; k++) {
      const [low, span] = [ends[k - 1] as number, (ends[k] as number) - (ends[k - 1] as number)];
      for (let n = 0; n < 3; n++) {
        const x = low + span * (rule.at[n] as number);
        sum += f(x, value + rise * (x - a.x)) * span * (rule.weight[n] as number);
      }
    }
  }
  return sum;
}
