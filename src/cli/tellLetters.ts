import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { lettersNote } from '../sheets/lettersNote.ts';
import { fonts } from './fonts.ts';
import type { Io } from './io.ts';

/** Tells on stderr which letters of a design's words its papers lack. @param more words that stand on them as well */
export async function tellLetters(
  { design }: Pick<AcceptedDesign, 'design'>,
  place: string,
  io: Io,
  more = '',
): Promise<void> {
  const note = lettersNote([design.guitar.name, design.timber.name, more], await fonts());
  if (note) io.err(`${place === '-' ? 'stdin' : place}: ${note}\n`);
}
