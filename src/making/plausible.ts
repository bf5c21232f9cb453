import type { Setting } from './step.ts';

/** Wanted values up to this, in their own unit, may be measured as nothing, or as a little the other way. */
const ABOUT_NOTHING = 0.05;
/** How far the other way, in the unit. */
const OTHER_WAY = 1;

/** What a measured value can be at all, in its setting's unit: beyond it a figure or a unit was mistyped. Own level. */
export interface Plausible {
  readonly most: number;
  /** The least that is allowed; undefined where it must be more than 0. */
  readonly least: number | undefined;
}

/** Above 0 and up to ten times what is wanted and ten more; from a little below 0 where about nothing is wanted. */
export function plausible({ value, tolerance }: Setting): Plausible {
  const nothing = Math.max(ABOUT_NOTHING, tolerance?.minus ?? 0);
  return {
    most: Math.ceil(10 * Math.abs(value) + 10),
    least: value <= nothing ? Math.min(0, Math.floor(value)) - OTHER_WAY : undefined,
  };
}

/** Whether a setting can have been measured so. */
export function isPlausible(setting: Setting, measured: number): boolean {
  const { least, most } = plausible(setting);
  return measured <= most && (least === undefined ? measured > 0 : measured >= least);
}
