import type { DesignText } from '../../design/design.ts';
import { DesignError } from '../../design/problem.ts';
import { writeDesign } from '../../files/designFile.ts';
import { openText } from '../store/openText.ts';
import type { KeptDesign, Shelf } from './shelf.ts';
import type { WindowName } from './windowName.ts';

/** Designs of closed windows that stay on the shelf, newest first. */
const MOST = 20;

export interface FoundDesign {
  readonly text: DesignText;
  readonly good: DesignText | undefined;
  /** The file that it came from or was saved to; its text is the design's own object where nothing has changed since. */
  readonly file: { readonly name: string; readonly text: DesignText } | undefined;
}

/**
 * The design to begin with: this window's own, on the shelf or left behind in the tab, else the last one that any
 * window wrote. Undefined when there is none that can be read. Takes the oldest ones off a full shelf. Rejects when the browser refuses the shelf.
 */
export async function findKept(
  shelf: Shelf,
  { own, before }: WindowName,
  left: KeptDesign | undefined,
): Promise<FoundDesign | undefined> {
  const all = [...(await shelf.all())].sort(([, a], [, b]) => b.at - a.at);
  await Promise.all(all.slice(MOST).map(([name]) => (name === own ? undefined : shelf.remove(name))));
  const mine = all.find(([name]) => name === (before ?? own))?.[1];
  const newest = left && left.at >= (mine?.at ?? 0) ? left : mine;
  for (const kept of [newest, mine, ...all.map(([, design]) => design)]) {
    const found = kept && readKept(kept);
    if (found) return found;
  }
  return undefined;
}

function readKept(kept: KeptDesign): FoundDesign | undefined {
  const text = readText(kept.text);
  return text && { text, good: readText(kept.good), file: readFile(kept.file, text) };
}

function readFile(file: unknown, present: DesignText): FoundDesign['file'] {
  if (typeof file !== 'object' || file === null || !('name' in file) || !('text' in file)) return undefined;
  const text = readText(file.text);
  if (typeof file.name !== 'string' || !text) return undefined;
  return { name: file.name, text: writeDesign(text) === writeDesign(present) ? present : text };
}

function readText(json: unknown): DesignText | undefined {
  try {
    return openText(json);
  } catch (error) {
    if (error instanceof DesignError) return undefined;
    throw error;
  }
}
