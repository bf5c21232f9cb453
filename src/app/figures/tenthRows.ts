import { fixed, signed } from '../../report/said.ts';
import type { Sensitivity } from '../../report/sensitivity.ts';
import { placeName } from '../form/placeName.ts';

/** What a tenth of a millimetre more of one dimension does, as shown. */
export interface TenthRow {
  readonly path: string;
  readonly label: string;
  /** mm */
  readonly now: string;
  readonly grams: string;
  /** Of the stiffness in the middle. */
  readonly percent: string;
}

export function tenthRows(sensitivities: readonly Sensitivity[]): readonly TenthRow[] {
  return sensitivities.map(({ path, value, massG, stiffnessShare }) => ({
    path,
    label: placeName(path),
    now: fixed(value, 2),
    grams: signed(massG, 3),
    percent: signed(100 * stiffnessShare, 2),
  }));
}
