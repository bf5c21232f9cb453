/**
 * Height of the rectangular bar that is as stiff, mm: h = ∛(12·EI/(E·b)), the standard beam turned round.
 *
 * @param stiffness EI, N·m² (see `bendingStiffness`)
 * @param width b, mm
 * @param modulusGPa E of the bar, along its grain; spruce: `BRACE_SPRUCE`
 * @throws RangeError when width or modulus isn't positive
 */
export function equivalentBrace(stiffness: number, width: number, modulusGPa: number): number {
  if (!(width > 0 && modulusGPa > 0)) throw new RangeError(`a bar ${width} mm wide of ${modulusGPa} GPa`);
  return Math.cbrt((12e3 * stiffness) / (modulusGPa * width));
}
