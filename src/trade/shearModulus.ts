/** G/E of sugar maple by how the wood is sawn: the USDA Wood Handbook's ratios G_LR/E_L and G_LT/E_L, as quoted elsewhere. */
export const SHEAR_SHARE = { quarterSawn: 0.111, flatSawn: 0.063 } as const;

/**
 * Shear modulus of a bridge that twists about its length, GPa, from E along the grain. A section wider than it is high is
 * sheared mostly in its wide face: the LR plane of quarter-sawn wood, the LT plane of flat-sawn. Which it is isn't known,
 * so this is the mean of both, and an estimate; sugar maple's ratios are taken for every wood.
 */
export function shearModulus(modulusGPa: number): number {
  return (modulusGPa * (SHEAR_SHARE.quarterSawn + SHEAR_SHARE.flatSawn)) / 2;
}
