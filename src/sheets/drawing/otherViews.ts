import type { Draft } from '../dimensions/draft.ts';
import type { Box } from '../paper/box.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Seen } from '../views/seen.ts';

/** Air between a view and what belongs to another, mm. */
const AIR = 2;

/** The place that a view takes on paper with some air round it, mm. */
export function extentBox(at: View, { extent }: Pick<Seen, 'extent'>): Box {
  const [left, bottom] = onPaper(at, [extent[0], extent[1]]);
  const [right, top] = onPaper(at, [extent[2], extent[3]]);
  return { left: left - AIR, right: right + AIR, bottom: bottom - AIR, top: top + AIR };
}

/** Dimensions of one view, kept out of the others. */
export function outOf(views: readonly Box[], drafts: readonly Draft[]): readonly Draft[] {
  return drafts.map((draft) => ({ ...draft, outOf: views }));
}
