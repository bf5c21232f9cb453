import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Ink, Sheet, Typeface } from '../sheet.ts';
import type { PapersOptions } from '../sheetOptions.ts';
import { masses } from './masses.ts';
import { titleStrip } from './titleStrip.ts';

/** A sheet before it is known which of how many it is. */
export interface Content {
  readonly id: string;
  readonly title: string;
  readonly scale: number;
  readonly inks: readonly Ink[];
  /** Whether it holds several views, whose places say what they are. */
  readonly views: boolean;
}

/** Contents as sheets, each with its frame and title strip. */
export function finished(
  contents: readonly Content[],
  accepted: AcceptedDesign,
  typeface: Typeface,
  options: PapersOptions,
): readonly Sheet[] {
  const mass = masses(accepted);
  return contents.map(({ id, title, scale, inks, views }, i) => ({
    id,
    title,
    paper: options.paper,
    scale,
    inks: [
      ...titleStrip(
        accepted,
        { title, scale, mass, views, number: [i + 1, contents.length] },
        options,
        typeface,
      ),
      ...inks,
    ],
  }));
}
