import { BRACE_SPRUCE, WOODS } from './woods.ts';

/** What of a design's timber its sources are asked of; kg/m³ and GPa. */
interface Timber {
  readonly name: string;
  readonly density: number;
  readonly stiffness: number;
}

/**
 * Where a timber's density, or its modulus of elasticity along the grain, comes from, in words that stand in brackets after
 * the number: the list's source as long as the number is the list's.
 */
export function timberSource(timber: Timber, what: 'density' | 'stiffness'): string {
  const wood = WOODS.find(({ name }) => name === timber.name);
  const listed = what === 'density' ? wood?.densityKgM3 : wood?.stiffnessGPa;
  if (wood && listed === undefined) return 'your own; no source was found';
  return wood && timber[what] === listed ? wood.source : 'your own entry';
}

/** The same of the modulus of the brace that a bridge is compared with, GPa. */
export function braceSource(stiffness: number): string {
  const { name, stiffnessGPa, source } = BRACE_SPRUCE;
  return stiffness === stiffnessGPa ? `${name}, ${source}` : 'your own entry';
}
