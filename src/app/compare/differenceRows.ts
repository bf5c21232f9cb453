import type { Difference } from '../../report/compare/differences.ts';
import { sayValue } from '../../report/compare/sayValue.ts';
import { fixed, signed } from '../../report/said.ts';
import { placeName } from '../form/placeName.ts';

/** A difference as shown: two numbers and by how much, or two values in words. */
export interface DifferenceRow {
  readonly path: string;
  readonly label: string;
  readonly unit: string;
  readonly reference: string;
  readonly here: string;
  /** Undefined where the values aren't both numbers. */
  readonly by: string | undefined;
}

/** @param differences of the reference (a) and the design on the bench (b) */
export function differenceRows(differences: readonly Difference[]): readonly DifferenceRow[] {
  return differences.map(({ path, unit, a, b }) => {
    const row = { path, label: placeName(path), unit };
    if (typeof a !== 'number' || typeof b !== 'number')
      return { ...row, reference: sayValue(a), here: sayValue(b), by: undefined };
    // two numbers are compared more easily with as many decimals each
    const decimals = Math.max(decimalsOf(a), decimalsOf(b));
    return {
      ...row,
      reference: fixed(a, decimals),
      here: fixed(b, decimals),
      // by what is shown, so that the row adds up
      by: signed(rounded(b, decimals) - rounded(a, decimals), decimals),
    };
  });
}

const decimalsOf = (value: number) => sayValue(value).split('.')[1]?.length ?? 0;

const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));
