/** Clusters of characters that a terminal draws two columns wide: East Asian wide and full-width, and pictures. */
const WIDE =
  /^(?:\p{Emoji_Presentation}|.*\uFE0F|[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uA960-\uA97C\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6]|[\u{1B000}-\u{1B2FF}\u{20000}-\u{3FFFD}])/u;
/** Clusters that take no room: marks with nothing to stand on, joiners, marks of direction. */
const NONE = /^[\p{Mn}\p{Me}\p{Cf}]+$/u;

const clusters = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/**
 * Columns that a line takes on a terminal, by Unicode's East Asian widths (UAX #11; ranges from memory): what a person
 * sees as one character is two wide in Chinese, Japanese, Korean and pictures, else one.
 */
export function textWidth(text: string): number {
  let width = 0;
  for (const { segment } of clusters.segment(text)) {
    if (NONE.test(segment)) continue;
    width += WIDE.test(segment) ? 2 : 1;
  }
  return width;
}
