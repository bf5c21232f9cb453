import { PAPERS, type Paper } from '../sheets/sheet.ts';
import { oneOf } from './command.ts';

const BY_WORD = { a4: PAPERS.A4, letter: PAPERS.Letter } as const;

/** The paper asked for, however it is capitalised. Throws `UseError`. */
export function readPaper(typed: string): Paper {
  return BY_WORD[oneOf('--paper', typed.toLowerCase(), ['a4', 'letter'])];
}
