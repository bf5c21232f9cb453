import type { Press } from './press.ts';

let loading: Promise<Press> | undefined;

/** The press, loaded once; after a failure the next call tries again. Rejects with words for a person. */
export function loadPress(): Promise<Press> {
  loading ??= load();
  return loading;
}

async function load(): Promise<Press> {
  try {
    const { createPress } = await import('./press.ts');
    return await createPress();
  } catch (error) {
    loading = undefined;
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(`What sets the papers in type can’t be loaded: ${why}`);
  }
}
