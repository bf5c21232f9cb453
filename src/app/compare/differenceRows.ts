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
  /** Undefined where the values aren't numbers. */
  readonly by: string | undefined;
}

/** @param differences of the reference (a) and the design on the bench (b) */
export function differenceRows(differences: readonly Difference[]): readonly DifferenceRow[] {
  return differences.map(({ path, unit, a, b, by }) => ({
    path,
    label: placeName(path),
    unit,
    reference: a === '' ? 'no say' : a,
    here: b === '' ? 'no say' : b,
    by: by === undefined ? undefined : signed(by, Math.abs(by) < 0.1 ? 3 : 2),
  }));
}
