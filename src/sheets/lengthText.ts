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

/** A limit of size beside its dimension: `+0.05`, `+0.002`, `0`. */
export function deviationText(mm: number, units: Units): string {
  const size = units === 'mm' ? trimmed(Math.abs(mm), 2) : trimmed(Math.abs(mm) / 25.4, 3);
  return Number(size) === 0 ? '0' : `${mm > 0 ? '+' : '−'}${size}`;
}

function trimmed(n: number, places: number): string {
  const text = (n + 0).toFixed(places).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text.replace('-', '−');
}
