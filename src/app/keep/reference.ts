import { acceptDesign } from '../../design/acceptDesign.ts';
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
    return typeof name === 'string' ? { name, text: acceptDesign(text).text } : undefined;
  } catch (error) {
    if (error instanceof DesignError || error instanceof SyntaxError) return undefined;
    throw error;
  }
}
