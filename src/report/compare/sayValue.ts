import { plain } from '../said.ts';
import type { DifferenceValue } from './differences.ts';

/** Decimals to which what differs is shown: finer is rounding. */
export const DECIMALS = 3;

/** What a design has in a field as a person reads it. */
export function sayValue(value: DifferenceValue): string {
  if (value === null) return 'not used';
  if (typeof value === 'number') return plain(value, DECIMALS);
  if (typeof value === 'string') return value;
  return value.map((one) => (typeof one === 'number' ? plain(one, DECIMALS) : (one ?? '–'))).join(' ');
}
