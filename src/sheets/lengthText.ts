import type { Tolerance } from '../trade/tolerances.ts';
import { toleranceText } from '../trade/toleranceText.ts';
import { inchFraction } from './inchFraction.ts';

export type Units = 'mm' | 'in';

/**
 * A length as it stands on paper. Millimetres to a hundredth. Inches as a fraction where one of at most 64ths is the
 * length itself, and to three places otherwise: so a fraction is never a rounded number.
 */
export function lengthText(mm: number, units: Units): string {
  if (units === 'mm') return trimmed(mm, 2);
  return inchFraction(mm) ?? trimmed(mm / 25.4, 3);
}

/** Degrees to a hundredth. */
export function angleText(degrees: number): string {
  return `${trimmed(degrees, 2)}°`;
}

/** A length's own limits beside its dimension, in millimetres to a hundredth or inches to a thousandth. */
export function limitsText(tolerance: Tolerance, units: Units): string {
  return toleranceText(tolerance, (mm) => (units === 'mm' ? trimmed(mm, 2) : trimmed(mm / 25.4, 3)));
}

function trimmed(n: number, places: number): string {
  const text = (n + 0).toFixed(places).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text.replace('-', '−');
}
