import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { drawLanes, lanesOf } from '../dimensions/lanes.ts';
import { lettered } from '../dimensions/lettered.ts';
import type { Box } from '../paper/box.ts';
import type { Content } from '../paper/content.ts';
import { contentBox } from '../paper/frame.ts';
import { HEADING, words } from '../paper/inks.ts';
import { LEADING, noteLines, notes } from '../paper/notes.ts';
import { BAR, scaleBar } from '../paper/scaleBar.ts';
import { scaleText } from '../paper/titleStrip.ts';
import { onPaper, placed, type View } from '../paper/view.ts';
import type { Ink, Typeface } from '../sheet.ts';
import type { PapersOptions } from '../sheetOptions.ts';
import { acrossView, type Cut } from '../views/acrossView.ts';
import { alongView } from '../views/alongView.ts';
import { hatching } from '../views/hatching.ts';
import { sectionPin } from '../views/sectionPin.ts';
import { acrossDimensions, acrossLeaders } from './acrossDimensions.ts';
import { alongDimensions, alongDrafts } from './alongDimensions.ts';
import { extentBox, outOf } from './otherViews.ts';
import { placeRows, placeTable, TABLE_WIDTH, tableHeight } from './placeTable.ts';
import { sectionNotes } from './sectionNotes.ts';

/** Scales of the section across, the largest that finds room being taken, and of the one along the slot (ISO 5455). */
const ACROSS = [5, 2, 1, 0.5] as const;
const ALONG = [1, 0.5, 0.2] as const;
/** Room round the two sections for dimensions and leaders, and beside the table, mm. */
const ROUND = { above: 32, below: 17, side: 20 } as const;
const ALONG_ROUND = { above: 26, below: 6, side: 8 } as const;
const BESIDE = 6;
/** Between strokes of hatching, mm. */
const SPACING = 2.2;

/** The section across through a pin and the slot, enlarged, and the one along the slot, with the table of places. */
export function sectionsContent(
  accepted: AcceptedDesign,
  typeface: Typeface,
  options: PapersOptions,
): Content {
  const { curves } = accepted;
  const { units, holes } = options;
  const pin = sectionPin(curves);
  const cuts = { across: acrossView(curves, pin, holes), along: alongView(curves, holes) };
  const frame = contentBox(options.paper);
  const remarks = sectionNotes(accepted, options);
  const room = frame.right - frame.left - BAR - 14;
  const foot = LEADING * noteLines(remarks, room, typeface) + 5;
  const area = { ...frame, bottom: frame.bottom + foot };
  const rows = placeRows(accepted);
  const { across, along, table } = arranged(cuts, tableHeight(rows), area);
  const fixed: readonly Ink[] = [
    ...drawn(cuts.across, across, 'A–A', ROUND.above),
    ...drawn(cuts.along, along, 'B–B', ALONG_ROUND.above),
    ...placeTable(rows, table, units),
    ...notes(remarks, [frame.left + 4, frame.bottom + foot - LEADING], room, typeface),
    ...(along.scale === 1 ? scaleBar([frame.right - BAR - 5, frame.bottom + 4]) : []),
  ];
  const [boxA, boxB] = [extentBox(across, cuts.across), extentBox(along, cuts.along)];
  const drafts = [
    ...outOf(
      [boxB],
      [
        ...drawLanes(
          lanesOf(acrossDimensions(accepted, pin, options), across.scale),
          across,
          cuts.across.extent,
          typeface,
        ),
        ...acrossLeaders(accepted, pin, across, typeface),
      ],
    ),
    ...outOf(
      [boxA],
      [
        ...drawLanes(
          lanesOf(alongDimensions(accepted, units), along.scale),
          along,
          cuts.along.extent,
          typeface,
        ),
        ...alongDrafts(accepted, along, units, typeface),
      ],
    ),
  ];
  return {
    id: 'sections',
    title: 'Drawing: sections',
    views: true,
    scale: along.scale,
    inks: [...fixed, ...lettered(drafts, fixed, area, typeface)],
  };
}

/** A section with its hatching and its name over it. */
function drawn(cut: Cut, view: View, name: string, above: number): readonly Ink[] {
  const [x, y] = onPaper(view, [cut.extent[0], cut.extent[3]]);
  return [
    ...hatching(cut.pieces, view, SPACING),
    ...placed(view, cut.inks),
    words(`${name} (${scaleText(view.scale)})`, [x, y + above - HEADING - 2], {
      height: HEADING,
      bold: true,
    }),
  ];
}

interface Layout {
  readonly across: View;
  readonly along: View;
  /** The table's upper left corner. */
  readonly table: readonly [number, number];
}

/** The largest scales at which both sections and the table, beside the one or the other, find room. */
function arranged(
  { across, along }: { readonly across: Cut; readonly along: Cut },
  table: number,
  area: Box,
): Layout {
  const size = ({ extent }: Cut) => [extent[2] - extent[0], extent[3] - extent[1]] as const;
  const [wide, tall] = [area.right - area.left, area.top - area.bottom];
  for (const alongScale of ALONG) {
    for (const acrossScale of ACROSS) {
      const a = {
        width: acrossScale * size(across)[0] + 2 * ROUND.side,
        height: acrossScale * size(across)[1] + ROUND.above + ROUND.below,
      };
      const b = {
        width: alongScale * size(along)[0] + 2 * ALONG_ROUND.side,
        height: alongScale * size(along)[1] + ALONG_ROUND.above + ALONG_ROUND.below,
      };
      for (const beside of ['along', 'across'] as const) {
        const extra = TABLE_WIDTH + BESIDE;
        const rowA = beside === 'across' ? { width: a.width + extra, height: Math.max(a.height, table) } : a;
        const rowB = beside === 'along' ? { width: b.width + extra, height: Math.max(b.height, table) } : b;
        if (Math.max(rowA.width, rowB.width) > wide || rowA.height + rowB.height > tall) continue;
        const gap = (tall - rowA.height - rowB.height) / 3;
        const leftA = area.left + (wide - rowA.width) / 2;
        const leftB = area.left + (wide - rowB.width) / 2;
        const topA = area.top - gap;
        const topB = topA - rowA.height - gap;
        return {
          across: {
            scale: acrossScale,
            x: leftA + ROUND.side - acrossScale * across.extent[0],
            y: topA - ROUND.above - acrossScale * across.extent[3],
          },
          along: {
            scale: alongScale,
            x: leftB + ALONG_ROUND.side - alongScale * along.extent[0],
            y: topB - ALONG_ROUND.above - alongScale * along.extent[3],
          },
          table: beside === 'across' ? [leftA + a.width, topA] : [leftB + b.width, topB],
        };
      }
    }
  }
  throw new RangeError('the sections find no room on this paper');
}
