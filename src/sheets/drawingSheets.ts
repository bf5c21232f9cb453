import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { sectionsContent } from './drawing/sectionsContent.ts';
import { viewsContent } from './drawing/viewsContent.ts';
import { type Content, finished } from './paper/content.ts';
import type { Sheet, Typeface } from './sheet.ts';
import type { PapersOptions } from './sheetOptions.ts';

/** The drawing for a shop in two sheets: plan and elevations; sections, slot and holes. */
export function drawingSheets(
  accepted: AcceptedDesign,
  typeface: Typeface,
  options: PapersOptions,
): readonly Sheet[] {
  return finished(drawingContents(accepted, typeface, options), accepted, typeface, options);
}

/** The same before it is known which sheets of how many they are. */
export function drawingContents(
  accepted: AcceptedDesign,
  typeface: Typeface,
  options: PapersOptions,
): readonly Content[] {
  return [viewsContent(accepted, typeface, options), sectionsContent(accepted, typeface, options)];
}
