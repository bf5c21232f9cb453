import { fitted } from '../paper/fitted.ts';
import { path, TEXT, words } from '../paper/inks.ts';
import type { Typeface } from '../sheet.ts';
import { baseLine, type Row } from './row.ts';

const NAME = 4;
const HEIGHT = 11;

interface Head {
  readonly left: number;
  readonly right: number;
  readonly title: string;
  readonly name: string;
  /** Of the design: matches paper and file. */
  readonly fingerprint: string;
  readonly date: string;
}

/** What stands over every page of text: whose it is, and which page of how many. */
export function pageHead(head: Head, typeface: Typeface): (page: number, of: number) => Row {
  const { left, right, title, name, fingerprint, date } = head;
  return (page, of) => {
    const facts = `Design ${fingerprint}   ${date}   Page ${page} of ${of}`;
    const room = right - left - typeface.width(facts, TEXT) - 6;
    const called = fitted(`${title}: ${name}`, NAME, room, typeface, true);
    return {
      height: HEIGHT,
      inks: (top) => {
        const y = baseLine(top, NAME);
        return [
          words(called.text, [left, y], { height: called.height, bold: true }),
          words(facts, [right, y], { anchor: 'end' }),
          path('frame', 'frame', [
            [left, y - 2.5],
            [right, y - 2.5],
          ]),
        ];
      },
    };
  };
}
