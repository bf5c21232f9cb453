import type { Point } from '../../../models/curves/segment.ts';

/** The three views of the drawing: plan (x, y), elevation (x, z), section at x = 0 (y, z). */
export type ViewName = 'plan' | 'elevation' | 'section';

/** How one view stands on the sheet: pixels a millimetre, and where its origin lies, px (x right, y down). */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** A point of the part's view, mm, on the sheet, px. The view's second axis points up the sheet. */
export function onSheet(view: View, [a, b]: Point): Point {
  return [view.x + view.scale * a, view.y - view.scale * b];
}
