import { acceptDesign } from '../../design/acceptDesign.ts';
import type { Accepted } from '../store/judge.ts';

/** An entry of the starters' index. */
interface Entry {
  readonly file: string;
  readonly name: string;
  readonly about: string;
}

/** A design to start from, read and drawn. */
export interface Starter extends Accepted {
  readonly name: string;
  readonly about: string;
}

/**
 * Reads the starter designs that lie beside the page.
 * @param read gives the JSON of one of them by its file's name
 */
export async function loadStarters(
  read: (file: string) => Promise<unknown> = readBeside,
): Promise<readonly Starter[]> {
  const index = (await read('index.json')) as readonly Entry[];
  return Promise.all(
    index.map(async ({ file, name, about }) => ({ name, about, ...acceptDesign(await read(file)) })),
  );
}

async function readBeside(file: string): Promise<unknown> {
  const answer = await fetch(new URL(`starters/${file}`, document.baseURI));
  if (!answer.ok) throw new Error(`${file} is not beside the page (${answer.status})`);
  return answer.json();
}
