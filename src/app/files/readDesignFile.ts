import type { DesignText } from '../../design/design.ts';
import { DesignError, sayProblem } from '../../design/problem.ts';
import { parseDesignFile } from '../../files/designFile.ts';
import { openText } from '../store/openText.ts';

export type Opened =
  | { readonly ok: true; readonly text: DesignText }
  | { readonly ok: false; readonly lines: readonly string[] };

/** Reads the characters of a design file. What the form can show is opened, even where it can't be made. */
export function readDesignFile(characters: string): Opened {
  try {
    return { ok: true, text: openText(parseDesignFile(characters)) };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    return { ok: false, lines: error.problems.map(sayProblem) };
  }
}
