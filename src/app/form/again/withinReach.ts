import { FIELDS } from '../../../design/fields.ts';

/** A corrected set-back that a saddle can have, mm; undefined for one so far off that something was misread. */
export function withinReach(setback: number | undefined): number | undefined {
  const { min, max } = FIELDS.strings.setbacks;
  return setback !== undefined && setback >= min && setback <= max ? setback : undefined;
}
