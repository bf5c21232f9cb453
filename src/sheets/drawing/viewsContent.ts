import type { Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Draft } from '../dimensions/draft.ts';
import { drawLanes, lanesOf } from '../dimensions/lanes.ts';
import { lettered } from '../dimensions/lettered.ts';
import type { Content } from '../paper/content.ts';
import { contentBox } from '../paper/frame.ts';
import { LEADING, noteLines, notes } from '../paper/notes.ts';
import { BAR, scaleBar } from '../paper/scaleBar.ts';
import { projectionOf } from '../paper/titleStrip.ts';
import { onPaper, placed } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import type { PapersOptions } from '../sheetOptions.ts';
import { endView } from '../views/endView.ts';
import { frontView } from '../views/frontView.ts';
import { planView } from '../views/planView.ts';
import { sectionPin } from '../views/sectionPin.ts';
import { cuttingMark } from './cuttingMarks.ts';
import { directions } from './directions.ts';
import { edgeLeader } from './edgeLeader.ts';
import { frontDimensions, frontLeaders } from './frontDimensions.ts';
import { generalNotes } from './generalNotes.ts';
import { extentBox, outOf } from './otherViews.ts';
import { planDimensions } from './planDimensions.ts';
import { planLeaders } from './planLeaders.ts';
import { slotAngle } from './slotAngle.ts';
import { type ViewsLayout, viewsLayout } from './viewsLayout.ts';

/** Scales to draw at, ISO 5455: the first at which everything finds room. */
const SCALES = [1, 0.5, 0.2] as const;

/** The plan's dimension lines stand beyond the marks of the cutting planes, mm. */
const BEYOND_MARKS = 14.5;

/** Plan, front elevation and one end, with all dimensions that are seen in them. The sections have their own sheet. */
export function viewsContent(accepted: AcceptedDesign, typeface: Typeface, options: PapersOptions): Content {
  const { curves } = accepted;
  const projection = projectionOf(options.paper);
  const views = {
    plan: planView(curves, options.holes),
    front: frontView(curves, options.holes),
    // first-angle: what is seen from the left stands on the right
    end: endView(curves, projection === 'first-angle' ? 'left' : 'right'),
  };
  const frame = contentBox(options.paper);
  const remarks = generalNotes(accepted, options);
  const room = frame.right - frame.left - BAR - 14;
  const foot = LEADING * noteLines(remarks, room, typeface) + 5;
  const area = { ...frame, bottom: frame.bottom + foot };
  const laned = (scale: number) => ({
    plan: lanesOf(planDimensions(accepted, options.units), scale, BEYOND_MARKS),
    front: lanesOf(frontDimensions(accepted, options.units), scale),
  });
  const layouts = SCALES.map((scale) => viewsLayout(views, laned(scale), scale, projection, area));
  const layout = layouts.find(({ fits }) => fits) ?? (layouts[layouts.length - 1] as ViewsLayout);
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
  const boxes = {
    plan: extentBox(at.plan, views.plan),
    front: extentBox(at.front, views.front),
    end: extentBox(at.end, views.end),
  };
  const drafts: readonly Draft[] = [
    ...outOf(
      [boxes.front, boxes.end],
      [
        cuttingMark(onPaper(at.plan, [pin.at[0], high]), [0, 1], [-1, 0], 'A'),
        cuttingMark(onPaper(at.plan, [pin.at[0], low]), [0, -1], [-1, 0], 'A'),
        cuttingMark(slotAt(left), [-lean[0], -lean[1]], up, 'B'),
        cuttingMark(slotAt(right), lean, up, 'B'),
        ...directions(accepted, at.plan),
        ...drawLanes(lanes.plan, at.plan, views.plan.extent, typeface),
        ...slotAngle(accepted, at.plan, right, typeface),
        ...planLeaders(accepted, at.plan, options.units, typeface),
      ],
    ),
    ...outOf(
      [boxes.plan, boxes.end],
      [
        ...drawLanes(lanes.front, at.front, views.front.extent, typeface),
        ...frontLeaders(accepted, at.front, options.units, typeface),
      ],
    ),
    ...outOf([boxes.plan, boxes.front], edgeLeader(accepted, at.end, views.end, options.units, typeface)),
  ];
  return {
    id: 'views',
    title: 'Drawing: views',
    views: true,
    scale,
    inks: [...fixed, ...lettered(drafts, fixed, area, typeface)],
  };
}
