/** A wood for bridges at 12 % moisture, with where its figures come from. */
export interface Wood {
  readonly name: string;
  readonly densityKgM3: number;
  /** Modulus of elasticity along the grain; undefined where no source was found. */
  readonly stiffnessGPa: number | undefined;
  /** How the figures lie in the source, where it gives a range; else empty. */
  readonly spread: string;
  /** Where the figures stand, and whether they were read there or in a quotation. */
  readonly source: string;
  /** Whether the tree is a *Dalbergia*, which CITES lists. */
  readonly dalbergia: boolean;
}

const CHUDNOFF = 'Chudnoff, Tropical Timbers of the World, USDA Agriculture Handbook 607 (1984)';
const WOOD_HANDBOOK = 'USDA Wood Handbook, GTR-190, as quoted elsewhere';

/**
 * The short list. Where a source gives a range, the middle of it stands here. The Wood Handbook gives the specific
 * gravity G on oven-dry weight and 12 % volume; density at 12 % moisture is 1000·G·1.12.
 */
export const WOODS: readonly Wood[] = [
  {
    name: 'Indian rosewood',
    densityKgM3: 849,
    stiffnessGPa: 12.27,
    spread: '',
    source: CHUDNOFF,
    dalbergia: true,
  },
  {
    name: 'African ebony',
    densityKgM3: 1009,
    stiffnessGPa: 17.65,
    spread: '',
    source: CHUDNOFF,
    dalbergia: false,
  },
  {
    name: 'Honduras rosewood',
    densityKgM3: 1009,
    stiffnessGPa: undefined,
    spread: 'Middle of 929 to 1089 kg/m³.',
    source: CHUDNOFF,
    dalbergia: true,
  },
  {
    name: 'Cocobolo',
    densityKgM3: 1105,
    stiffnessGPa: undefined,
    spread: 'Middle of 993 to 1217 kg/m³.',
    source: CHUDNOFF,
    dalbergia: true,
  },
  {
    name: 'African padauk',
    densityKgM3: 745,
    stiffnessGPa: 11.45,
    spread: 'Middle of 673 to 817 kg/m³ and of 10.8 to 12.1 GPa.',
    source: CHUDNOFF,
    dalbergia: false,
  },
  {
    name: 'Purpleheart',
    densityKgM3: 833,
    stiffnessGPa: 15.65,
    spread: '',
    source: 'A published table, as quoted elsewhere',
    dalbergia: false,
  },
  {
    name: 'Sugar maple',
    densityKgM3: 705.6,
    stiffnessGPa: 12.6,
    spread: '',
    source: WOOD_HANDBOOK,
    dalbergia: false,
  },
  {
    name: 'Black walnut',
    densityKgM3: 616,
    stiffnessGPa: 11.6,
    spread: '',
    source: WOOD_HANDBOOK,
    dalbergia: false,
  },
];

/** Whether a design's timber is this wood with its figures unchanged. A stiffness that has no source may be any. */
export function sameWood(
  wood: Wood,
  timber: { readonly name: unknown; readonly density: unknown; readonly stiffness: unknown },
): boolean {
  return (
    timber.name === wood.name &&
    timber.density === wood.densityKgM3 &&
    (wood.stiffnessGPa === undefined || timber.stiffness === wood.stiffnessGPa)
  );
}

/** What a brace is taken to be of when a bridge is compared with one. */
export const BRACE_SPRUCE = {
  name: 'Sitka spruce',
  /** Along the grain at 12 % moisture. */
  stiffnessGPa: 10.8,
  source: 'USDA Wood Handbook, from memory, not looked up',
} as const;
