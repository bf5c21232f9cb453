import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { drawingContents } from './drawingSheets.ts';
import { finished } from './paper/content.ts';
import type { Sheet, Typeface } from './sheet.ts';
import type { PapersOptions } from './sheetOptions.ts';
import { drillingTemplate } from './templates/drillingTemplate.ts';
import { frontTemplate } from './templates/frontTemplate.ts';
import { gauges } from './templates/gauges.ts';
import { outlineTemplate } from './templates/outlineTemplate.ts';
import { saddleTemplate } from './templates/saddleTemplate.ts';
import { templateContents } from './templates/templateContents.ts';

/**
 * All papers of a design: the drawing, then the templates at full size. A saddle that its strings don't fit on has no
 * template.
 */
export function allSheets(
  accepted: AcceptedDesign,
  typeface: Typeface,
  options: PapersOptions,
): readonly Sheet[] {
  const { paper, units } = options;
  const saddle = saddleTemplate(accepted, units);
  const arts = [
    outlineTemplate(accepted, typeface),
    drillingTemplate(accepted, units, typeface),
    frontTemplate(accepted, units),
    ...(saddle ? [saddle] : []),
    gauges(accepted, units, typeface),
  ];
  const contents = [
    ...drawingContents(accepted, typeface, options),
    ...arts.flatMap((art) => templateContents(art, paper, typeface)),
  ];
  return finished(contents, accepted, typeface, options);
}
