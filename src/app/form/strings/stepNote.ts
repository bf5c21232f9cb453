import { noteName, noteNumber, pitchFrequency } from '../../../trade/notes.ts';

/** A pitch moved by semitones, as it was typed: `F#3` → `G3`, `Bb2` → `A2`, `82.4 Hz` → `87.3 Hz`. What can't be read stays. */
export function stepNote(typed: string, semitones: number): string {
  const number = noteNumber(typed);
  if (number !== undefined)
    return noteName(number + semitones, /^.[b♭]/.test(typed.trim()) ? 'flat' : 'sharp');
  const hz = pitchFrequency(typed);
  if (hz === undefined) return typed;
  const moved = (hz * 2 ** (semitones / 12)).toFixed(1);
  return typed.trim().replace(/^[\d.,]+/, typed.includes(',') ? moved.replace('.', ',') : moved);
}
