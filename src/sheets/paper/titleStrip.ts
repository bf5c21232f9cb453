import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { fingerprint } from '../fingerprint.ts';
import type { Ink, Paper, Typeface } from '../sheet.ts';
import type { PapersOptions } from '../sheetOptions.ts';
import { fitted } from './fitted.ts';
import { boxLines, frameBox, STRIP } from './frame.ts';
import { HEADING, path, SMALL, TEXT, words } from './inks.ts';
import { projectionSymbol } from './projectionSymbol.ts';

/** What a sheet's strip says of the sheet. */
export interface Heading {
  readonly title: string;
  readonly scale: number;
  /** Mass as drilled and as reamed, g. */
  readonly mass: readonly [number, number];
  /** Whether the sheet holds several views, whose places then say what they are. */
  readonly views: boolean;
  /** Which sheet of how many. */
  readonly number: readonly [number, number];
}

interface Cell {
  readonly caption: string;
  readonly text: string;
  /** Share of the strip's width. */
  readonly share: number;
  readonly bold?: boolean;
  readonly symbol?: true;
}

/** The title strip along the bottom of every sheet, and the frame. */
export function titleStrip(
  { design, text }: AcceptedDesign,
  heading: Heading,
  options: PapersOptions,
  typeface: Typeface,
): readonly Ink[] {
  const [number, of] = heading.number;
  const [drilled, reamed] = heading.mass.map((g) => g.toFixed(1));
  const mass = drilled === reamed ? `${drilled} g` : `${drilled} g as drilled, ${reamed} g reamed`;
  const upper: readonly Cell[] = [
    { caption: 'Bridge', text: design.guitar.name, share: 0.42, bold: true },
    { caption: 'Sheet', text: heading.title, share: 0.24, bold: true },
    { caption: 'Design’s fingerprint', text: fingerprint(text), share: 0.14 },
    { caption: 'Date', text: options.date, share: 0.12 },
    { caption: 'Sheet no.', text: `${number} of ${of}`, share: 0.08 },
  ];
  const lower: readonly Cell[] = [
    { caption: 'Timber', text: design.timber.name, share: 0.2 },
    { caption: `Mass at ${design.timber.density} kg/m³`, text: mass, share: 0.25 },
    { caption: 'Scale', text: scaleText(heading.scale), share: 0.07 },
    heading.views
      ? { caption: 'Projection', text: projectionOf(options.paper), share: 0.18, symbol: true }
      : { caption: 'Printing', text: 'at 100 %, not fitted', share: 0.18 },
    { caption: 'General tolerance', text: 'ISO 2768-m', share: 0.13 },
    { caption: 'Dimensions', text: options.units === 'mm' ? 'mm' : 'inches', share: 0.09 },
    { caption: 'Paper', text: options.paper.name, share: 0.08 },
  ];
  const frame = frameBox(options.paper);
  const strip = { ...frame, top: frame.bottom + STRIP };
  const half = frame.bottom + STRIP / 2;
  return [
    boxLines(frame),
    boxLines(strip),
    path('frame', 'detail', [
      [strip.left, half],
      [strip.right, half],
    ]),
    ...cells(upper, half, options.paper, typeface),
    ...cells(lower, strip.bottom, options.paper, typeface),
  ];
}

export function projectionOf(paper: Paper): 'first-angle' | 'third-angle' {
  return paper.name === 'A4' ? 'first-angle' : 'third-angle';
}

export function scaleText(scale: number): string {
  return scale >= 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`;
}

function cells(row: readonly Cell[], bottom: number, paper: Paper, typeface: Typeface): readonly Ink[] {
  const { left, right } = frameBox(paper);
  let x = left;
  return row.flatMap((cell, i) => {
    const width = cell.share * (right - left);
    const start = x + 1.5;
    x += width;
    const room = width - 3 - (cell.symbol ? SYMBOL_ROOM : 0);
    const name = cell.bold
      ? fitted(cell.text, HEADING, room, typeface, true)
      : fitted(cell.text, TEXT, room, typeface);
    return [
      ...(i === 0
        ? []
        : [
            path('frame', 'detail', [
              [x - width, bottom],
              [x - width, bottom + STRIP / 2],
            ]),
          ]),
      words(cell.caption, [start, bottom + STRIP / 2 - 1 - SMALL], { height: SMALL }),
      words(name.text, [start, bottom + 1.5], { height: name.height, ...(cell.bold ? { bold: true } : {}) }),
      ...(cell.symbol
        ? projectionSymbol(projectionOf(paper), [x - SYMBOL_ROOM / 2, bottom + STRIP / 4], 5)
        : []),
    ];
  });
}

const SYMBOL_ROOM = 15;
