import { coreAreaM2, type StringSpec } from './stringSpec.ts';

/**
 * What string steel is stressed up to, Pa: 2,000 N/mm² (Zollner, Physics of the Electric Guitar, §1.2, read in an
 * extract). A figure to compare with, not a guaranteed strength: thin wire is stronger than thick.
 */
export const STEEL_STRESS_LIMIT_PA = 2e9;

/** Tension over the core's cross-section, Pa: the core carries a wound string's tension (S5's source). */
export function coreStress(string: StringSpec, tensionN: number): number {
  return tensionN / coreAreaM2(string);
}

/** The core's stress as a share of what string steel is stressed up to: 1 is the limit. */
export function coreStressShare(string: StringSpec, tensionN: number): number {
  return coreStress(string, tensionN) / STEEL_STRESS_LIMIT_PA;
}
