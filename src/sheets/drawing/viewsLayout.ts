import type { Lanes } from '../dimensions/lanes.ts';
import type { Box } from '../paper/box.ts';
import type { Projection } from '../paper/projectionSymbol.ts';
import type { View } from '../paper/view.ts';
import type { Seen } from '../views/seen.ts';

/** Least room above, below and beside a view for leaders and marks, mm. */
const LEAST = { plan: 17, front: 13, below: 8, left: 26, right: 4, end: 3 } as const;

export interface ViewsLayout {
  readonly scale: number;
  readonly fits: boolean;
  readonly at: Readonly<Record<'plan' | 'front' | 'end', View>>;
}

/** The three views at a scale, in their places by the projection, in the middle of an area. */
export function viewsLayout(
  { plan, front, end }: Readonly<Record<'plan' | 'front' | 'end', Seen>>,
  lanes: { readonly plan: Lanes; readonly front: Lanes },
  scale: number,
  projection: Projection,
  area: Box,
): ViewsLayout {
  const tall = ({ extent }: Seen) => scale * (extent[3] - extent[1]);
  const wide = ({ extent }: Seen) => scale * (extent[2] - extent[0]);
  const gutter = {
    left: Math.max(LEAST.left, lanes.plan.depth('left'), lanes.front.depth('left')),
    planRight: Math.max(LEAST.right, lanes.plan.depth('right')),
    frontRight: lanes.front.depth('right') + LEAST.end,
    planAbove: Math.max(LEAST.plan, lanes.plan.depth('above')),
    planBelow: Math.max(LEAST.plan, lanes.plan.depth('below')),
    frontAbove: Math.max(LEAST.front, lanes.front.depth('above') + 2),
    frontBelow: Math.max(LEAST.below, lanes.front.depth('below')),
  };
  const width =
    gutter.left + wide(plan) + Math.max(gutter.planRight, gutter.frontRight + wide(end) + LEAST.right);
  const planHeight = gutter.planAbove + tall(plan) + gutter.planBelow;
  const frontHeight = gutter.frontAbove + tall(front) + gutter.frontBelow;
  const [roomWide, roomTall] = [area.right - area.left, area.top - area.bottom];
  const spare = Math.max(0, roomTall - planHeight - frontHeight);
  const x = area.left + Math.max(0, roomWide - width) / 2 + gutter.left - scale * plan.extent[0];
  const gap = spare / 3;
  const [planTop, frontTop] =
    projection === 'third-angle'
      ? [area.top - gap, area.top - 2 * gap - planHeight]
      : [area.top - 2 * gap - frontHeight, area.top - gap];
  const planY = planTop - gutter.planAbove - scale * plan.extent[3];
  const frontY = frontTop - gutter.frontAbove - scale * front.extent[3];
  return {
    scale,
    fits: width <= roomWide && planHeight + frontHeight <= roomTall,
    at: {
      plan: { scale, x, y: planY },
      front: { scale, x, y: frontY },
      end: { scale, x: x + scale * (front.extent[2] - end.extent[0]) + gutter.frontRight, y: frontY },
    },
  };
}
