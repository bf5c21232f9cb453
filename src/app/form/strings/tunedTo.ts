import type { DesignText } from '../../../design/design.ts';
import { noteNumber } from '../../../trade/notes.ts';
import type { Tuning } from '../../../trade/tunings.ts';
import { entryAt } from './stringLists.ts';

/** The design in a tuning for as many strings. Notes of strings beyond it stay. */
export function withTuning(text: DesignText, { notes }: Tuning): DesignText {
  const typed = text.strings.notes;
  const rest = Array.isArray(typed) ? typed.slice(notes.length) : [];
  return { ...text, strings: { ...text.strings, notes: [...notes, ...rest] } };
}

/** Whether each string has the tuning's note, by whatever name. */
export function isTunedTo({ strings }: DesignText, { notes }: Tuning): boolean {
  return notes.every((note, i) => noteNumber(String(entryAt(strings.notes, i))) === noteNumber(note));
}
