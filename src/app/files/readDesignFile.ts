import type { DesignText } from '../../design/design.ts';
import { DesignError, type Problem } from '../../design/problem.ts';
import { parseDesignFile } from '../../files/designFile.ts';
import { placeName } from '../form/placeName.ts';
import { openText } from '../store/openText.ts';

export type Opened =
  | { readonly ok: true; readonly text: DesignText }
  | { readonly ok: false; readonly lines: readonly string[] };

/** What can be done about a file that isn't opened, from where its opener stands. */
const REMEDY = 'Open another file, or begin from one of the starters.';

/** Reads the characters of a design file. What the form can show is opened, even where it can't be made. */
export function readDesignFile(characters: string): Opened {
  try {
    return { ok: true, text: openText(parseDesignFile(characters)) };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    return { ok: false, lines: [...error.problems.map(sayRefused), REMEDY] };
  }
}

/** Why a file isn't opened, in the form's own names. */
function sayRefused({ code, path, value }: Problem): string {
  switch (code) {
    case 'not-a-design':
      return 'This is not a bridge design.';
    case 'broken-file':
      return `This file can’t be read: ${value}.`;
    case 'newer-version':
      return 'This design was written by another version of Pinbridge. That version, or a newer one, opens it.';
    case 'unknown-field':
      return `${placeName(path)}: not known to this version of Pinbridge.`;
    default:
      return `${placeName(path)}: ${value === 'nothing' ? 'missing' : `it can’t be ${value}`}.`;
  }
}
