import { coreDiameterMm, STEEL_MODULUS_PA, type StringSpec } from './stringSpec.ts';

/**
 * Inharmonicity coefficient B of a string between pinned ends, no unit: S7, B = π³Ed⁴/(64TL²), so that
 * f_n = n·f₀·√(1 + B·n²) (Fletcher, J. Acoust. Soc. Am. 36, 203 (1964), as quoted elsewhere). d is the core's: the
 * wrap adds mass, hardly stiffness. Tension in N, length in m, modulus in Pa.
 */
export function inharmonicity(
  string: StringSpec,
  tensionN: number,
  lengthM: number,
  modulusPa = STEEL_MODULUS_PA,
): number {
  const d = coreDiameterMm(string) / 1000;
  return (Math.PI ** 3 * modulusPa * d ** 4) / (64 * tensionN * lengthM ** 2);
}
