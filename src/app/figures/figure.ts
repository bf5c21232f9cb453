/** One figure of the right column, and what it opens to. */
export interface Figure {
  readonly label: string;
  /** As shown, without its unit. */
  readonly value: string;
  readonly unit: string;
  /** How it comes about, in a line. */
  readonly formula: string;
  /** Where the formula or its numbers come from. */
  readonly source: string;
  /** Path of the field that has most to do with it. */
  readonly path?: string;
}

/** A number with a fixed count of decimals, and never a minus before nothing. */
export function fixed(value: number, decimals: number): string {
  return value.toFixed(decimals).replace(/^-(?=[0.]+$)/, '');
}
