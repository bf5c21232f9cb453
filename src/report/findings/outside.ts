import type { Design } from '../../design/design.ts';
import { above, below, fromTo, said } from '../said.ts';
import type { Finding } from './finding.ts';

type Limit = keyof Design['limits'];

/** The limits between which numbers must lie, and how these are said. */
interface Range {
  readonly least: Limit;
  readonly most: Limit;
  readonly unit: string;
  readonly decimals?: number;
}

/** What of some numbers lies outside a range. */
interface Outside {
  /** Of the numbers, counted from 0, those below and those above. */
  readonly low: readonly number[];
  readonly high: readonly number[];
  /** The worst of them as said; empty where there is none. */
  readonly lowest: string;
  readonly highest: string;
  /** What a finding tells of it. */
  readonly held: Pick<Finding, 'found' | 'limit' | 'limitPath'>;
}

/**
 * Holds numbers against two limits of the design, as both are said; an undefined one is held against neither. Undefined when
 * all lie within.
 */
export function outside(
  { limits }: Design,
  values: readonly (number | undefined)[],
  { least, most, unit, decimals = 2 }: Range,
): Outside | undefined {
  const where = (wrong: (value: number) => boolean) =>
    values.flatMap((value, i) => (value !== undefined && wrong(value) ? [i] : []));
  const low = where((value) => below(value, limits[least], decimals));
  const high = where((value) => above(value, limits[most], decimals));
  if (low.length + high.length === 0) return undefined;
  const worst = (list: readonly number[], of: (...all: number[]) => number) =>
    list.length === 0 ? '' : said(of(...list.map((i) => values[i] ?? 0)), unit, decimals);
  const [lowest, highest] = [worst(low, Math.min), worst(high, Math.max)];
  return {
    low,
    high,
    lowest,
    highest,
    held: {
      found: [lowest, highest].filter((one) => one !== '').join(' and '),
      limit: fromTo(limits[least], limits[most], unit),
      limitPath: `limits.${high.length > 0 ? most : least}`,
    },
  };
}
