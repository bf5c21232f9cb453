import { readQuantity } from '../../design/quantity.ts';
import type { AppState } from '../store/state.ts';

/** Most strings that a bridge of this kind has. */
const MOST = 12;

/** How many strings the form shows: as many as are typed; while that can't be read, as many as there were. */
export function stringCount({ history, lastGood }: AppState): number {
  const { count } = history.present.strings;
  const read = typeof count === 'object' ? undefined : readQuantity(count, 'count');
  if (read?.ok && Number.isInteger(read.value) && read.value > 0 && read.value <= MOST) return read.value;
  return lastGood?.design.strings.count ?? 0;
}
