import type { OrientedBox } from './paper/box.ts';
import type { TextInk } from './paper/inks.ts';
import type { Typeface } from './sheet.ts';

/** How far letters reach below the base line, as a share of a capital's height. */
const BELOW = 0.3;

/** The place that a text takes on a sheet. */
export function textBox(text: TextInk, typeface: Typeface): OrientedBox {
  const a = (text.angle * Math.PI) / 180;
  const [dx, dy] = [Math.cos(a), Math.sin(a)];
  const length = typeface.width(text.text, text.height, text.bold);
  const along = { start: 0.5, middle: 0, end: -0.5 }[text.anchor] * length;
  const up = (text.height * (1 - BELOW)) / 2;
  return {
    centre: [text.at[0] + along * dx - up * dy, text.at[1] + along * dy + up * dx],
    along: [dx, dy],
    halfLength: length / 2,
    halfHeight: (text.height * (1 + BELOW)) / 2,
  };
}
