import type { Difference } from '../../report/compare/differences.ts';
import { signed } from '../fit/column.ts';
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
  return differences.map(({ path, unit, a, b, by }) => {
    const row = { path, label: placeName(path), unit };
    if (by === undefined) {
      const said = (value: string) => (value === '' ? 'has no say' : value);
      return { ...row, reference: said(a), here: said(b), by: undefined };
    }
    // two numbers are compared more easily with as many decimals each
    const decimals = Math.max(decimalsOf(a), decimalsOf(b));
    const padded = (value: string) => {
      const missing = decimals - decimalsOf(value);
      return missing === 0 ? value : `${value}${value.includes('.') ? '' : '.'}${'0'.repeat(missing)}`;
    };
    // by what is shown, so that the row adds up
    return { ...row, reference: padded(a), here: padded(b), by: signed(read(b) - read(a), decimals) };
  });
}

const read = (shown: string) => Number(shown.replace('−', '-'));

const decimalsOf = (value: string) => value.split('.')[1]?.length ?? 0;
