import type { AppStore } from '../store/store.ts';
import { chooseDesignFile } from './chooseDesignFile.ts';
import { readDesignFile } from './readDesignFile.ts';
import { wasCancelled } from './wasCancelled.ts';

/** Asks for a design file and opens it as one step that can be undone. */
export async function openDesign(store: AppStore): Promise<void> {
  try {
    const file = await chooseDesignFile();
    const opened = readDesignFile(await file.text());
    if (!opened.ok) {
      store.setSession({ notice: { title: `${file.name} can’t be opened`, lines: opened.lines } });
      return;
    }
    store.open(opened.text);
    store.setSession({ file: { name: file.name, handle: file.handle, text: opened.text } });
  } catch (error) {
    if (wasCancelled(error)) return;
    store.setSession({ notice: { title: 'The file can’t be opened', lines: [String(error)] } });
  }
}
