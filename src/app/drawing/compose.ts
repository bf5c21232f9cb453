import type { Point } from '../../../models/curves/segment.ts';
import type { Dimension, Place, Side } from './dimension.ts';
import { drawAngle } from './drawAngle.ts';
import { drawLinear } from './drawLinear.ts';
import type { Drawn } from './drawn.ts';
import { drawRadius } from './drawRadius.ts';
import { overlap, runsThrough } from './label.ts';
import { type Lanes, laneOf, lanesOf } from './lanes.ts';
import { type PartExtent, sheetBox, type ViewExtent } from './partOnSheet.ts';
import { fittingScale, placeViews, type Size, type Views } from './placeViews.ts';
import { onSheet, type View, type ViewName } from './view.ts';

/** A dimension and the one of its places that was chosen. */
export interface Pick {
  readonly dimension: Dimension;
  readonly place: Place;
}

export interface Mark extends Drawn {
  readonly dimension: Dimension;
}

/** Views and dimensions as they stand on a sheet. */
export interface Layout {
  readonly views: Views;
  readonly marks: readonly Mark[];
}

/** The sheet with these dimensions, as large as it can be drawn, whatever runs into what; undefined without any room. */
export function compose(
  size: Size,
  part: PartExtent,
  picks: readonly Pick[],
  withSection: boolean,
): Layout | undefined {
  const chosen = picks.map(({ dimension, place }) => ({ text: dimension.text, place }));
  // from the scale without any lanes, go down until the lanes that a scale needs leave room for it
  let scale = fittingScale(size, part, lanesOf([], 1), withSection);
  for (let i = 0; i < 12 && scale > 0; i++) {
    const next = fittingScale(size, part, lanesOf(chosen, scale), withSection);
    if (next >= scale - 1e-6) break;
    scale = next;
  }
  if (!(scale > 0)) return undefined;
  const lanes = lanesOf(chosen, scale);
  const views = placeViews(size, part, lanes, withSection, scale);
  const marks = picks.flatMap(({ dimension, place }) => {
    const view = views[place.view];
    if (!view) return [];
    const lane = laneOf(place);
    const line = lane ? lineOf(part[place.view], view, lane, lanes(place.view, lane.side)) : 0;
    return [{ dimension, ...draw(place, dimension.text, view, line) }];
  });
  return { views, marks };
}

function lineOf(
  extent: ViewExtent,
  view: View,
  { side, rank }: { readonly side: Side; readonly rank: number },
  lanes: Lanes,
): number {
  const out = lanes.lines.get(rank) ?? 0;
  switch (side) {
    case 'above':
      return onSheet(view, [0, extent.high])[1] - out;
    case 'below':
      return onSheet(view, [0, extent.low])[1] + out;
    case 'left':
      return onSheet(view, [extent.left, 0])[0] - out;
    case 'right':
      return onSheet(view, [extent.right, 0])[0] + out;
  }
}

function draw(place: Place, text: string, view: View, line: number): Drawn {
  switch (place.kind) {
    case 'linear':
      return drawLinear(place, text, view, line);
    case 'angle':
      return drawAngle(place, text, view, line);
    case 'radius':
      return drawRadius(place, text, view, line);
  }
}

/** Whether a sheet can be read: every label on it, clear of each other, of the part and of other dimensions' lines. */
export function isLegible({ views, marks }: Layout, size: Size, part: PartExtent): boolean {
  const sheet = sheetBox(size.width, size.height);
  const walls = (Object.keys(views) as ViewName[]).flatMap((name) => wallsOf(part[name], views[name]));
  return marks.every((mark, i) => {
    const { box } = mark.label;
    const isOn =
      box.left >= sheet.left &&
      box.top >= sheet.top &&
      box.right <= sheet.right &&
      box.bottom <= sheet.bottom;
    return (
      isOn &&
      !marks.slice(i + 1).some((other) => overlap(box, other.label.box)) &&
      !marks.some((other) => other !== mark && other.lines.some(([a, b]) => runsThrough(box, a, b))) &&
      !walls.some(([a, b]) => runsThrough(box, a, b))
    );
  });
}

/** Every side of a view's outlines on the sheet, px. */
function wallsOf({ outlines }: ViewExtent, view: View | undefined): readonly (readonly [Point, Point])[] {
  if (!view) return [];
  return outlines.flatMap((outline) => {
    const points = outline.map((p) => onSheet(view, p));
    return points.map((p, i) => [p, points[(i + 1) % points.length] as Point] as const);
  });
}
