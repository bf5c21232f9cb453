import { acceptDesign } from '../../design/acceptDesign.ts';
import { FIELDS } from '../../design/fields.ts';
import { DesignError } from '../../design/problem.ts';
import type { Reference } from '../store/state.ts';

const KEY = 'pinbridge-reference';

/** The design to compare with that was chosen before in this browser. One that can't be made any more is forgotten. */
export function rememberedReference(): Reference | undefined {
  try {
    const kept = localStorage.getItem(KEY);
    const reference = kept === null ? undefined : readReference(kept);
    if (kept !== null && !reference) localStorage.removeItem(KEY);
    return reference;
  } catch {
    // a browser that refuses storage: the usual bridge will do
    return undefined;
  }
}

export function rememberReference(reference: Reference): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(reference));
  } catch {
    // refused: it holds until the page is left
  }
}

function readReference(kept: string): Reference | undefined {
  try {
    const { name, text } = Object(JSON.parse(kept)) as { readonly name?: unknown; readonly text?: unknown };
    if (typeof name !== 'string') return undefined;
    const { text: read, design } = acceptDesign(text);
    return { name: isName(name) ? name : design.guitar.name, text: read };
  } catch (error) {
    if (error instanceof DesignError || error instanceof SyntaxError) return undefined;
    throw error;
  }
}

/** Whether it would do as a design's own name. */
function isName(name: string): boolean {
  return name.trim() !== '' && name.length <= FIELDS.guitar.name.maxLength && !/\p{Cc}/u.test(name);
}
