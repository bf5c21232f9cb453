import { safeName } from '../files/safeName.ts';

/**
 * A file name for a design that none of the call's other designs has: -2, -3 … is added where names are alike. Names
 * that differ only in capitals are alike, since many disks don't tell them apart.
 *
 * @param taken the names given so far in lower case; the new one is added
 * @param called a design's name as a file's, with what tells it from others kept at its end
 */
export function distinctName(
  name: string,
  taken: Set<string>,
  called: (name: string, suffix: string) => string = safeName,
): string {
  for (let count = 1; ; count++) {
    const candidate = called(name, count === 1 ? '' : `-${count}`);
    const key = candidate.toLowerCase();
    if (taken.has(key)) continue;
    taken.add(key);
    return candidate;
  }
}
