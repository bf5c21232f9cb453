import type { Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { angular } from '../dimensions/angular.ts';
import type { Draft } from '../dimensions/draft.ts';
import { drawLanes, type Lanes, lanesOf } from '../dimensions/lanes.ts';
import { leader } from '../dimensions/leader.ts';
import { lettered } from '../dimensions/lettered.ts';
import { angleText, lengthText } from '../lengthText.ts';
import type { Content } from '../paper/content.ts';
import { contentBox } from '../paper/frame.ts';
import { LEADING, noteLines, notes } from '../paper/notes.ts';
import { BAR, scaleBar } from '../paper/scaleBar.ts';
import { projectionOf } from '../paper/titleStrip.ts';
import { onPaper, placed, type View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import type { PapersOptions } from '../sheetOptions.ts';
import { endView } from '../views/endView.ts';
import { frontView } from '../views/frontView.ts';
import { planView } from '../views/planView.ts';
import { sectionPin } from '../views/sectionPin.ts';
import type { Seen } from '../views/seen.ts';
import { cuttingMark } from './cuttingMarks.ts';
import { directions } from './directions.ts';
import { frontDimensions, frontLeaders } from './frontDimensions.ts';
import { generalNotes } from './generalNotes.ts';
import { planDimensions } from './planDimensions.ts';
import { planLeaders } from './planLeaders.ts';

/** Scales to draw at, ISO 5455: the first at which everything finds room. */
const SCALES = [1, 0.5, 0.2] as const;
/** Least room above, below and beside a view for leaders and marks, mm. */
const LEAST = { plan: 17, front: 13, below: 8, left: 26, right: 4, end: 3 } as const;

/** The plan's dimension lines stand beyond the marks of the cutting planes, mm. */
const BEYOND_MARKS = 13;

/** Plan, front elevation and one end, with all dimensions that are seen in them. The sections have their own sheet. */
export function viewsContent(accepted: AcceptedDesign, typeface: Typeface, options: PapersOptions): Content {
  const { curves } = accepted;
  const projection = projectionOf(options.paper);
  const views = {
    plan: planView(curves),
    front: frontView(curves),
    // first-angle: what is seen from the left stands on the right
    end: endView(curves, projection === 'first-angle' ? 'left' : 'right'),
  };
  const frame = contentBox(options.paper);
  const remarks = generalNotes(accepted, options.units);
  const room = frame.right - frame.left - BAR - 14;
  const foot = LEADING * noteLines(remarks, room, typeface) + 5;
  const area = { ...frame, bottom: frame.bottom + foot };
  const laned = (scale: number) => ({
    plan: lanesOf(planDimensions(accepted, options.units), scale, BEYOND_MARKS),
    front: lanesOf(frontDimensions(accepted, options.units), scale),
  });
  const layouts = SCALES.map((scale) => arranged(views, laned(scale), scale, projection, area));
  const layout = layouts.find(({ fits }) => fits) ?? (layouts[layouts.length - 1] as Layout);
  const { scale, at } = layout;
  const lanes = laned(scale);
  const pin = sectionPin(curves);
  const [left, low, right, high] = views.plan.extent;
  const lean: Point = [Math.cos(curves.slot.angle), Math.sin(curves.slot.angle)];
  const slotAt = (x: number): Point => onPaper(at.plan, [x, x * Math.tan(curves.slot.angle)]);
  const up: Point = [-lean[1], lean[0]];
  const fixed = [
    ...placed(at.plan, views.plan.inks),
    ...placed(at.front, views.front.inks),
    ...placed(at.end, views.end.inks),
    ...notes(remarks, [frame.left + 4, frame.bottom + foot - LEADING], room, typeface),
    ...(scale === 1 ? scaleBar([frame.right - BAR - 5, frame.bottom + 4]) : []),
  ];
  const drafts: readonly Draft[] = [
    cuttingMark(onPaper(at.plan, [pin.at[0], high]), [0, 1], [-1, 0], 'A'),
    cuttingMark(onPaper(at.plan, [pin.at[0], low]), [0, -1], [-1, 0], 'A'),
    cuttingMark(slotAt(left), [-lean[0], -lean[1]], up, 'B'),
    cuttingMark(slotAt(right), lean, up, 'B'),
    ...directions(accepted, at.plan),
    ...drawLanes(lanes.plan, at.plan, views.plan.extent, typeface),
    ...drawLanes(lanes.front, at.front, views.front.extent, typeface),
    ...slotAngle(accepted, at.plan, right, typeface),
    ...planLeaders(accepted, at.plan, options.units, typeface),
    ...frontLeaders(accepted, at.front, options.units, typeface),
    ...edgeLeader(accepted, at.end, views.end, options, typeface),
  ];
  return {
    id: 'views',
    title: 'Drawing: views',
    views: true,
    scale,
    inks: [...fixed, ...lettered(drafts, fixed, area, typeface)],
  };
}

interface Layout {
  readonly scale: number;
  readonly fits: boolean;
  readonly at: Readonly<Record<'plan' | 'front' | 'end', View>>;
}

/** The three views at a scale, in their places by the projection, in the middle of an area. */
function arranged(
  { plan, front, end }: Readonly<Record<'plan' | 'front' | 'end', Seen>>,
  lanes: { readonly plan: Lanes; readonly front: Lanes },
  scale: number,
  projection: 'first-angle' | 'third-angle',
  area: { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number },
): Layout {
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

/** The slot's angle to the line across, at the left end. */
function slotAngle(
  { design, curves: { slot } }: AcceptedDesign,
  at: View,
  half: number,
  typeface: Typeface,
): readonly Draft[] {
  if (Math.abs(slot.angle) < 1e-9) return [];
  const corner = onPaper(at, [0, 0]);
  return [
    angular(
      {
        label: angleText(Math.abs(design.saddle.angle)),
        corner,
        from: Math.PI,
        to: Math.PI + slot.angle,
        radius: at.scale * half + 13,
        extend: [at.scale * (half + 2) + 1, at.scale * (slot.halfLength + 2) + 1],
      },
      typeface,
    ),
  ];
}

function edgeLeader(
  { curves: { edge } }: AcceptedDesign,
  at: View,
  { extent }: Seen,
  options: PapersOptions,
  typeface: Typeface,
): readonly Draft[] {
  if (edge.kind === 'none') return [];
  const size = lengthText(edge.size, options.units);
  const label = edge.kind === 'round' ? `R${size} all round` : `${size} × 45° all round`;
  const off = edge.kind === 'round' ? (1 - Math.SQRT1_2) * edge.size : edge.size / 2;
  const pointings = ([1, -1] as const).flatMap((side) => {
    const x = side > 0 ? extent[2] - off : extent[0] + off;
    const tip = onPaper(at, [x, extent[3] - off]);
    return [50, 70, 35].map((degrees) => {
      const a = (degrees * Math.PI) / 180;
      return { tip, way: [side * Math.cos(a), Math.sin(a)] as Point };
    });
  });
  // back over the view, where there is more room than beside it
  const over = pointings.map(({ tip, way }) => ({ tip, way: [way[0] * 0.15, way[1]] as Point }));
  return [leader(label, [...pointings, ...over], typeface)];
}
