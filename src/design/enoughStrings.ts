import type { DesignText, Typed } from './design.ts';
import { isListField } from './fields/kinds.ts';
import { fieldsOf } from './fields.ts';
import { readQuantity } from './quantity.ts';

/** The design's lists of strings. */
const LISTS = Object.entries(fieldsOf('strings')).filter(([, field]) => isListField(field));

/**
 * The design with an entry in every list for each of its strings: what is missing is like the last string there is. Lists
 * are never cut, so that a count typed by mistake loses nothing.
 */
export function enoughStrings(text: DesignText): DesignText {
  const { count } = text.strings;
  const read = typeof count === 'object' ? undefined : readQuantity(count, 'count');
  const wanted = read?.ok && read.value <= 12 ? Math.floor(read.value) : 0;
  const strings = text.strings as Readonly<Record<string, Typed>>;
  const short = LISTS.filter(([key]) => Array.isArray(strings[key]) && strings[key].length < wanted);
  if (short.length === 0) return text;
  const filled = short.map(([key, { kind }]) => {
    const list = strings[key] as readonly (number | string)[];
    // what was measured of one string is not so of another
    const more = kind === 'measures' ? '' : (list[list.length - 1] ?? '');
    return [key, Array.from({ length: wanted }, (_, i) => list[i] ?? more)];
  });
  return { ...text, strings: { ...text.strings, ...Object.fromEntries(filled) } };
}
