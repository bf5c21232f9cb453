/**
 * Tension that brings a string to a frequency, N: S2, T = μ(2Lf)², for mass per length in kg/m, sounding length in m
 * and frequency in Hz (Anderson & Beausoleil, J. Acoust. Soc. Am. 156(1), 683 (2024), whose tables it reproduces).
 */
export function tension(massKgM: number, lengthM: number, frequencyHz: number): number {
  return massKgM * (2 * lengthM * frequencyHz) ** 2;
}
