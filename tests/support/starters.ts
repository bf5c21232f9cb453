import { readFileSync } from 'node:fs';
import { type AcceptedDesign, acceptDesign } from '../../src/design/acceptDesign.ts';

const folder = new URL('../../public/starters/', import.meta.url);
const read = (file: string): unknown => JSON.parse(readFileSync(new URL(file, folder), 'utf8'));

/** The starter designs by name, accepted. */
export const starters: ReadonlyMap<string, AcceptedDesign> = new Map(
  (read('index.json') as readonly { readonly file: string; readonly name: string }[]).map(
    ({ file, name }) => [name, acceptDesign(read(file))],
  ),
);

export function starter(name: string): AcceptedDesign {
  const found = starters.get(name);
  if (!found) throw new Error(`there is no starter ${name}`);
  return found;
}
