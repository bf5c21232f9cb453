import type { KeptDesign } from './shelf.ts';
import type { TabMemory } from './windowName.ts';

const KEY = 'pinbridge-left-behind';

/** Puts a design into the tab's own memory, which is written before the page can die. */
export function leaveBehind(memory: TabMemory, design: KeptDesign): void {
  try {
    memory.setItem(KEY, JSON.stringify(design));
  } catch {
    // full or refused: the shelf is the better place anyway
  }
}

/** The design that this tab's last page left behind, if it can be read. */
export function leftBehind(memory: TabMemory): KeptDesign | undefined {
  try {
    const json: unknown = JSON.parse(memory.getItem(KEY) ?? 'null');
    return typeof json === 'object' &&
      json !== null &&
      'text' in json &&
      'at' in json &&
      typeof json.at === 'number'
      ? {
          text: json.text,
          good: 'good' in json ? json.good : undefined,
          file: 'file' in json ? json.file : undefined,
          at: json.at,
        }
      : undefined;
  } catch {
    return undefined;
  }
}
