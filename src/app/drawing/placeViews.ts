import type { Side } from './dimension.ts';
import type { Lanes } from './lanes.ts';
import type { PartExtent } from './partOnSheet.ts';
import type { View, ViewName } from './view.ts';

/** Air round the whole drawing, between plan and elevation, and between elevation and section, px. */
const MARGIN = 10;
const ROW_GAP = 12;
const COLUMN_GAP = 14;
/** The most that spare height adds between plan and elevation, px. */
const MOST_SPREAD = 36;

export interface Size {
  readonly width: number;
  readonly height: number;
}

export type Views = Readonly<Partial<Record<ViewName, View>>> & {
  readonly plan: View;
  readonly elevation: View;
};

type LanesAt = (view: ViewName, side: Side) => Lanes;

const long = (e: { left: number; right: number }) => e.right - e.left;
const tall = (e: { low: number; high: number }) => e.high - e.low;

/** Depths of the lanes between and round the views, px. */
function gutters(lanes: LanesAt, withSection: boolean) {
  const depth = (view: ViewName, side: Side) => lanes(view, side).depth;
  return {
    left: Math.max(depth('plan', 'left'), depth('elevation', 'left'), 12),
    planRight: Math.max(depth('plan', 'right'), 12),
    between: withSection
      ? depth('elevation', 'right') + Math.max(COLUMN_GAP, depth('section', 'left'))
      : depth('elevation', 'right'),
    right: withSection ? Math.max(depth('section', 'right'), 4) : 0,
    above: Math.max(depth('plan', 'above'), 4),
    middle: Math.max(depth('plan', 'below') + depth('elevation', 'above'), 4),
    below: Math.max(depth('elevation', 'below'), 4),
  };
}

/** The largest scale, px a millimetre, at which the views and these lanes have room; not positive when none has. */
export function fittingScale(size: Size, part: PartExtent, lanes: LanesAt, withSection: boolean): number {
  const g = gutters(lanes, withSection);
  const across = size.width - 2 * MARGIN - g.left;
  const down = size.height - 2 * MARGIN - ROW_GAP - g.above - g.middle - g.below;
  const row = long(part.elevation) + (withSection ? long(part.section) : 0);
  return Math.min(
    (across - g.planRight) / long(part.plan),
    (across - g.between - g.right) / row,
    down / (tall(part.plan) + tall(part.elevation)),
  );
}

/** Where the views stand at a scale: plan over elevation, the section to the right of it (third-angle projection). */
export function placeViews(
  size: Size,
  part: PartExtent,
  lanes: LanesAt,
  withSection: boolean,
  scale: number,
): Views {
  const g = gutters(lanes, withSection);
  const wide = scale * long(part.plan);
  const row = withSection ? g.between + scale * long(part.section) + g.right : g.between;
  const used = g.left + wide + Math.max(g.planRight, row);
  const left = (size.width - used) / 2 + g.left;
  const high = g.above + g.middle + g.below + ROW_GAP + scale * (tall(part.plan) + tall(part.elevation));
  const spare = Math.max(0, size.height - 2 * MARGIN - high);
  const spread = Math.min(MOST_SPREAD, spare / 3);
  const top = MARGIN + (spare - spread) / 2 + g.above;
  const elevationTop = top + scale * tall(part.plan) + g.middle + ROW_GAP + spread;
  const x = left - scale * part.plan.left;
  const y = elevationTop + scale * part.elevation.high;
  const section: View = {
    scale,
    x: left + wide + g.between - scale * part.section.left,
    y,
  };
  return {
    plan: { scale, x, y: top + scale * part.plan.high },
    elevation: { scale, x, y },
    ...(withSection && { section }),
  };
}
