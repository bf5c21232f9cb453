/** Concert pitch, the A above middle C, Hz (ISO 16; from memory). */
export const CONCERT_A_HZ = 440;

/** Number of the A above middle C, from which the others are counted (MIDI's numbering). */
const A4 = 69;

const SEMITONES: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };
const SHARP_NAMES = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'] as const;
const FLAT_NAMES = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'] as const;

// letter, any accidentals of one kind, octave; the letter comes first, so that `bb3` is B flat
const NOTE = /^([A-G])(?:([#♯]{1,2})|([b♭]{1,2}))?(-?\d)$/i;
const HERTZ = /^(\d+(?:[.,]\d*)?|[.,]\d+)\s*(?:hz)?$/i;

/**
 * Number of a note by its name in scientific pitch notation: `E2`, `F#3`, `Bb3`, `B♭3`, `c♯4`. Middle C (`C4`) is 60,
 * a semitone is 1. Undefined if the text is no such name.
 */
export function noteNumber(name: string): number | undefined {
  const [, letter = '', sharps = '', flats = '', octave = ''] = NOTE.exec(name.trim()) ?? [];
  const semitone = SEMITONES[letter.toUpperCase()];
  if (semitone === undefined) return undefined;
  return 12 * (Number(octave) + 1) + semitone + sharps.length - flats.length;
}

/** Name of the note nearest to a number, with sharps or with flats; `noteNumber` reads it back. */
export function noteName(number: number, accidental: 'sharp' | 'flat' = 'sharp'): string {
  const nearest = Math.round(number);
  const names = accidental === 'sharp' ? SHARP_NAMES : FLAT_NAMES;
  return `${names[((nearest % 12) + 12) % 12]}${Math.floor(nearest / 12) - 1}`;
}

/** Frequency of a note in equal temperament, Hz: S1, f = A·2^((m−69)/12). */
export function noteFrequency(number: number, aHz = CONCERT_A_HZ): number {
  return aHz * 2 ** ((number - A4) / 12);
}

/** Number of a frequency in Hz, which need not be whole: 0.01 is a cent. The inverse of `noteFrequency`. */
export function frequencyNumber(hz: number, aHz = CONCERT_A_HZ): number {
  return A4 + 12 * Math.log2(hz / aHz);
}

/**
 * Frequency of a pitch as a person writes it, Hz: a note's name, which follows A, or a frequency (`82.4 Hz`, `82,4`),
 * which doesn't. Undefined if it is neither, or not above 0.
 */
export function pitchFrequency(pitch: string, aHz = CONCERT_A_HZ): number | undefined {
  const number = noteNumber(pitch);
  if (number !== undefined) return noteFrequency(number, aHz);
  const hz = Number(HERTZ.exec(pitch.trim())?.[1]?.replace(',', '.') ?? 0);
  return hz > 0 ? hz : undefined;
}
