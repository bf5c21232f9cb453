import { comparison, type Pair } from '../../report/compare/comparison.ts';
import { fixed } from '../../report/said.ts';
import { sourced } from '../fit/sourced.ts';
import type { Figure } from './figure.ts';
import type { Weighed } from './figuresOf.ts';

/** The numbers by which designs are compared, of the reference (a) and of the design on the bench (b), by their ids. */
export type Pairs = ReadonlyMap<string, Pair>;

/** What is weighed together has no share where one of the two weighs its wood alone. */
export function pairsOf(reference: Weighed, bench: Weighed): Pairs {
  const [theirs, mine] = [reference, bench].map(({ accepted }) => accepted.design.timber.weighed);
  return new Map(
    comparison(reference, bench).figures.map((pair) => [
      pair.id,
      pair.id === 'mass-together' && theirs !== mine ? { ...pair, share: undefined } : pair,
    ]),
  );
}

/** A compared number as a figure, with the numbers that went in. */
export function pairFigure(
  pairs: Pairs,
  id: string,
  inputs: string,
  more: Partial<Figure> = {},
): readonly Figure[] {
  const pair = pairs.get(id);
  if (!pair) return [];
  const { label, b, decimals, unit, formula, share, estimate } = pair;
  const degrees = unit === '°';
  const value = `${fixed(b, decimals)}${degrees ? unit : ''}`;
  const note = estimate ? { note: 'an estimate' } : {};
  return [
    { label, value, unit: degrees ? '' : unit, share, ...note, ...sourced([formula], inputs), ...more },
  ];
}
