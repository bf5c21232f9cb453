import { writeDesign } from '../../files/designFile.ts';
import { safeName } from '../../files/safeName.ts';
import type { AppStore } from '../store/store.ts';
import { wasCancelled } from './wasCancelled.ts';

/** What design files are called, so that they stand apart from other JSON. */
const ENDING = '.pinbridge.json';

/** Saves the design as typed: into the file it came from, where the browser can, else into one that is asked for. */
export async function saveDesign(store: AppStore): Promise<void> {
  const { history, session } = store.getState();
  const text = history.present;
  // a design of another name, say one that undo brought back, must not go over the file of this one
  const file = session.file?.text.guitar.name === text.guitar.name ? session.file : undefined;
  const name = file?.name ?? `${safeName(String(text.guitar.name))}${ENDING}`;
  try {
    const { fileSave } = await import('browser-fs-access');
    const blob = new Blob([writeDesign(text)], { type: 'application/json' });
    const handle = await fileSave(
      blob,
      { fileName: name, extensions: ['.json'], description: 'Bridge design', id: 'pinbridge-designs' },
      file?.handle ?? null,
    );
    store.closeStep();
    store.setSession({ file: { name: handle?.name ?? name, handle: handle ?? undefined, text } });
  } catch (error) {
    if (wasCancelled(error)) return;
    store.setSession({ notice: { title: 'The design could not be saved', lines: [String(error)] } });
  }
}
