import type { DesignText } from '../../design/design.ts';
import { DesignError, sayProblem } from '../../design/problem.ts';
import { openText } from '../store/openText.ts';

/** What design files are called. */
export const ENDING = '.pinbridge.json';

/** A design as it stands in a file: JSON that a person can read, ended by a line break. */
export function writeDesign(text: DesignText): string {
  return `${JSON.stringify(text, null, 2)}\n`;
}

export type Opened =
  | { readonly ok: true; readonly text: DesignText }
  | { readonly ok: false; readonly lines: readonly string[] };

/** Reads the characters of a design file. What the form can show is opened, even where it can't be made. */
export function readDesignFile(characters: string): Opened {
  let json: unknown;
  try {
    json = JSON.parse(characters);
  } catch {
    return {
      ok: false,
      lines: ['It is not JSON. Design files end in .pinbridge.json and are written by “Save the design”.'],
    };
  }
  try {
    return { ok: true, text: openText(json) };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    return { ok: false, lines: error.problems.map(sayProblem) };
  }
}
