import { chooseDesignFile } from '../files/chooseDesignFile.ts';
import { readDesignFile } from '../files/readDesignFile.ts';
import { wasCancelled } from '../files/wasCancelled.ts';
import { placeName } from '../form/placeName.ts';
import { judge } from '../store/judge.ts';
import type { Reference } from '../store/state.ts';

/** What came of asking for a file: a design to compare with, why there is none, or nothing when the asking was broken off. */
export type OpenedReference = Reference | { readonly trouble: string } | undefined;

/** Asks for a design file to compare with. One that can't be made has no figures, and is refused. */
export async function openReference(): Promise<OpenedReference> {
  try {
    const file = await chooseDesignFile();
    return readReferenceFile(file.name, await file.text());
  } catch (error) {
    return wasCancelled(error) ? undefined : { trouble: `The file can’t be opened: ${String(error)}` };
  }
}

/** @param file the file's name */
export function readReferenceFile(file: string, characters: string): Exclude<OpenedReference, undefined> {
  const opened = readDesignFile(characters);
  if (!opened.ok) return { trouble: `${file} can’t be compared with. ${opened.lines.join(' ')}` };
  const { ok, problems } = judge(opened.text);
  if (!ok) {
    const first = problems[0];
    const where = first ? placeName(first.path) : 'its dimensions';
    return { trouble: `${file} can’t be made as it is: open it and mend “${where}” first.` };
  }
  return { name: String(opened.text.guitar.name).trim(), text: opened.text };
}
