import { fixed } from '../../report/said.ts';
/** One figure of the right column, and what it opens to. */
export interface Figure {
  readonly label: string;
  /** As shown, without its unit. */
  readonly value: string;
  readonly unit: string;
  /** How it comes about, in a line. */
  readonly formula: string;
  /** Where the formula or its numbers come from, where that is more than what stands in the formula. */
  readonly source?: string;
  /** Said under the label at all times: that it was set by hand, and what would be solved. */
  readonly note?: string;
  /** As a share of the reference design's, where it is compared. */
  readonly share?: number | undefined;
  /** Path of the field that has most to do with it. */
  readonly path?: string;
}

/** A share in whole hundredths, or in tenths where a hundredth would hide it: `104 %`, `99.7 %`. */
export function percent(share: number): string {
  const hundredths = 100 * share;
  const near = Math.abs(hundredths - 100) < 1 && Math.abs(hundredths - 100) >= 0.05;
  return `${fixed(hundredths, near ? 1 : 0)} %`;
}

/** A centre of mass by its y and z, mm, as one would look for it on the bridge: `5.97 mm behind, 3.75 mm up`. */
export function balance(y: number, z: number): string {
  return `${fixed(Math.abs(y), 2)} mm ${y < 0 ? 'behind' : 'before'}, ${fixed(z, 2)} mm up`;
}
