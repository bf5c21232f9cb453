import { arc, line, type Point } from '../../models/curves/segment.ts';
import { type Ink, PAPERS, type Pen, type Sheet } from '../../src/sheets/sheet.ts';

/** A straight line on a sheet, mm. */
export const stroke = (pen: Pen, from: Point, to: Point): Ink => ({
  kind: 'line',
  layer: 'marks',
  pen,
  chain: [line(from, to)],
  closed: false,
});

export const words = (text: string, at: Point, more: Partial<Extract<Ink, { kind: 'text' }>> = {}): Ink => ({
  kind: 'text',
  layer: 'text',
  text,
  at,
  anchor: 'start',
  height: 2.5,
  angle: 0,
  ...more,
});

/** Text that no code page holds: an emoji, a script that the font lacks, marks of XML, quotes. */
export const ODD_TEXT = '“Ø” ½ ± 5° <b> & "q" Привет 🪵 橋';

/** A bar of 100 mm from 30 to 130, lines of every pen, a slot, a circle, arrowhead, and text in every way. */
export const testSheet: Sheet = {
  id: 'test',
  title: 'Test',
  paper: PAPERS.A4,
  scale: 1,
  inks: [
    stroke('outline', [30, 20], [130, 20]),
    stroke('outline', [20, 30], [20, 130]),
    ...(['outline', 'detail', 'hidden', 'centre', 'cutting', 'hatch', 'frame'] as const).map((pen, i) =>
      stroke(pen, [150, 20 + 5 * i], [250, 20 + 5 * i]),
    ),
    {
      kind: 'line',
      layer: 'slot',
      pen: 'detail',
      chain: [
        line([60, 60], [120, 60]),
        arc([120, 60], [120, 70], [120, 65], 1),
        line([120, 70], [60, 70]),
        arc([60, 70], [60, 60], [60, 65], 1),
      ],
      closed: true,
    },
    { kind: 'circle', layer: 'pins', pen: 'detail', centre: [90, 100], radius: 20 },
    {
      kind: 'line',
      layer: 'dimensions',
      pen: 'detail',
      chain: [line([200, 100], [210, 98]), line([210, 98], [210, 102]), line([210, 102], [200, 100])],
      closed: true,
      fill: 'ink',
    },
    words('Begins here', [150, 150]),
    words('Halved here', [150, 155], { anchor: 'middle' }),
    words('Ends here', [150, 160], { anchor: 'end' }),
    words('Upright', [200, 150], { angle: 90, bold: true }),
    words(ODD_TEXT, [30, 180]),
    words('', [30, 190]),
  ],
};
