import { readQuantity } from './quantity.ts';

/** Units in which a luthier says a dome, a fretboard's radius or a scale. */
const UNITS = ['m', 'in', 'ft'] as const;

/**
 * A hint for a length whose unit was left out: `8.5 is read as millimetres: write 8.5 m or 8.5 ft. `, for the units in
 * which the bare number lies within the field's range (mm). Empty where none does, or where a unit was given.
 */
export function forgottenUnit(
  given: number | string,
  { min, max }: { readonly min: number; readonly max: number },
): string {
  const bare = String(given).trim();
  if (/[^\d\s.,/]/.test(bare)) return '';
  const fitting = UNITS.map((unit) => `${bare} ${unit}`).filter((typed) => {
    const read = readQuantity(typed, 'length');
    return read.ok && read.value >= min && read.value <= max;
  });
  return fitting.length === 0 ? '' : `${bare} is read as millimetres: write ${fitting.join(' or ')}. `;
}
