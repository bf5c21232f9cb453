/** A number with a fixed count of decimals, a true minus, and never a minus before nothing. */
export function fixed(value: number, decimals: number): string {
  return value
    .toFixed(decimals)
    .replace(/^-(?=[0.]+$)/, '')
    .replace('-', '−');
}

/** A number without needless decimals. */
export function plain(value: number, decimals = 2): string {
  return fixed(value, decimals).replace(/\.?0+$/, (end) => (decimals > 0 ? '' : end));
}

/** A number with its sign, plus too; none before nothing. */
export function signed(value: number, decimals: number, write = fixed): string {
  const text = write(value, decimals);
  return value > 0 && Number.parseFloat(text) !== 0 ? `+${text}` : text;
}

/** A number with its unit as a person reads it, without needless decimals. */
export function said(value: number, unit: string, decimals = 2): string {
  return withUnit(plain(value, decimals), unit);
}

/** A number with its unit and all its decimals, as it is set and measured. */
export function measure(value: number, unit: string, decimals: number): string {
  return withUnit(fixed(value, decimals), unit);
}

const withUnit = (number: string, unit: string) =>
  unit === '' || unit === '°' ? `${number}${unit}` : `${number} ${unit}`;

/** mm, to a hundredth. */
export const mm = (value: number) => said(value, 'mm');

/** A range, its unit said once: `0 to 1.5 mm`, `2.5° to 3.5°`. */
export function fromTo(least: number, most: number, unit: string): string {
  return `${said(least, unit === '°' ? unit : '')} to ${said(most, unit)}`;
}

/** Rounded as it is said. */
const shown = (value: number, decimals: number) => Math.round(value * 10 ** decimals) / 10 ** decimals;

/** Whether a number is below its limit as both are said: `2 mm` is never held against `at least 2 mm`. */
export function below(value: number, least: number, decimals = 2): boolean {
  return value < least && shown(value, decimals) < shown(least, decimals);
}

/** Whether a number is above its limit as both are said. */
export function above(value: number, most: number, decimals = 2): boolean {
  return below(-value, -most, decimals);
}
