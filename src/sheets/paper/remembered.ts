import type { Typeface } from '../sheet.ts';

/** A typeface that measures each text once: placing one asks for its width at every place that it might go to. */
export function remembered(typeface: Typeface): Typeface {
  const known = new Map<string, number>();
  return {
    width(text, height, bold) {
      const key = `${height} ${bold ? 'bold' : ''} ${text}`;
      const width = known.get(key) ?? typeface.width(text, height, bold);
      known.set(key, width);
      return width;
    },
  };
}
