import { safeName } from '../files/safeName.ts';

/**
 * A file name for a design that none of the call's other designs has: -2, -3 … is added where names are alike. Names
 * that differ only in capitals are alike, since many disks don't tell them apart.
 *
 * @param taken the names given so far in lower case; the new one is added
 */
export function distinctName(name: string, taken: Set<string>): string {
  for (let count = 1; ; count++) {
    const candidate = safeName(name, count === 1 ? '' : `-${count}`);
    const key = candidate.toLowerCase();
    if (taken.has(key)) continue;
    taken.add(key);
    return candidate;
  }
}
