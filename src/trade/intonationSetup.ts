import type { ClampedEnds } from './endCondition.ts';
import type { EndHeights } from './endHeights.ts';
import { coreAreaM2, coreDiameterMm, STEEL_MODULUS_PA, type StringSpec } from './stringSpec.ts';

/** All that intonation asks of one string on one guitar: lengths in mm, the others without unit. */
export interface IntonationSetup {
  /** Nominal scale S: twice the distance from nut to twelfth fret. */
  readonly scaleMm: number;
  /** Over the plane of the fret tops, h0 and hs. */
  readonly heights: EndHeights;
  /** κ = E·A/T: how much more a string resists stretching than its tension pulls. */
  readonly stretch: number;
  /** e0 = √(E·I/(T·S²)): bending stiffness against tension. */
  readonly bending: number;
  /** α. */
  readonly clampedEnds: ClampedEnds;
}

/** A string under tension: N, and Young's modulus of its core in Pa. */
export interface TenseString {
  readonly string: StringSpec;
  readonly tensionN: number;
  readonly modulusPa?: number;
}

/** I2's κ and e0 from the string's core (I = πd⁴/64), beside the guitar's scale and heights. */
export function intonationSetup(
  { string, tensionN, modulusPa = STEEL_MODULUS_PA }: TenseString,
  scaleMm: number,
  heights: EndHeights,
  clampedEnds: ClampedEnds,
): IntonationSetup {
  const momentM4 = (Math.PI / 64) * (coreDiameterMm(string) / 1000) ** 4;
  return {
    scaleMm,
    heights,
    stretch: (modulusPa * coreAreaM2(string)) / tensionN,
    bending: Math.sqrt((modulusPa * momentM4) / tensionN) / (scaleMm / 1000),
    clampedEnds,
  };
}
