import {
  appendBezierCurve,
  beginText,
  closePath,
  concatTransformationMatrix,
  endText,
  fill,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  PDFName,
  type PDFOperator,
  PrintScaling,
  setDashPattern,
  setFillingGrayscaleColor,
  setFontAndSize,
  setLineJoin,
  setLineWidth,
  setTextMatrix,
  showText,
  stroke,
} from '@cantoo/pdf-lib';
import * as fontkit from 'fontkit';
import { arc, type Chain, type Point } from '../../models/curves/segment.ts';
import { type Ink, PENS, type Pen, type Sheet } from '../sheets/sheet.ts';
import { FEATURES, type FontTypeface } from '../sheets/typeface.ts';
import { arcBeziers } from './arcBeziers.ts';
import { decimal } from './decimal.ts';

/** Points of a PDF in a millimetre. */
const POINTS = 72 / 25.4;

export interface PdfFacts {
  /** What readers show as the document's name: any characters. */
  readonly title: string;
  /** Stands in the file as the day it was made: the same sheets and date give the same bytes. */
  readonly date: Date;
}

/**
 * Sheets as the pages of a PDF (1.7) at their own scale, each as large as its paper: lines and arcs drawn, text as
 * text in fonts that the file carries (those letters of them that it uses). It asks printers not to scale it.
 * Throws when there are no sheets.
 */
export async function writePdf(
  sheets: readonly Sheet[],
  typeface: FontTypeface,
  { title, date }: PdfFacts,
): Promise<Uint8Array> {
  if (sheets.length === 0) throw new Error('There is no sheet to write');
  const doc = await PDFDocument.create({ updateMetadata: false });
  doc.setTitle(title.replace(/\p{Cs}/gu, '\ufffd'), { showInWindowTitleBar: true });
  doc.setCreator('Pinbridge');
  doc.setLanguage('en');
  doc.setCreationDate(date);
  doc.setModificationDate(date);
  doc.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  doc.registerFontkit(fontkit);
  const fonts = await embedFonts(doc, sheets, typeface);
  for (const sheet of sheets) {
    const { width, height } = sheet.paper;
    const page = doc.addPage([Number(decimal(width * POINTS, 4)), Number(decimal(height * POINTS, 4))]);
    for (const { name, font } of fonts.values()) page.node.setFontDictionary(name, font.ref);
    page.pushOperators(
      concatTransformationMatrix(POINTS, 0, 0, POINTS, 0, 0),
      setLineJoin(1), // round: a mitre would reach beyond sharp corners
      ...sheet.inks.flatMap((ink) => operators(ink, typeface, fonts)),
    );
  }
  return doc.save();
}

type Text = Extract<Ink, { kind: 'text' }>;

const isBold = (ink: Text) => ink.bold ?? false;

/** What is drawn of a text; nothing of blanks alone. */
const letters = (ink: Text, typeface: FontTypeface) => typeface.shown(ink.text, ink.bold).trimEnd();

type Fonts = ReadonlyMap<boolean, { readonly name: PDFName; readonly font: PDFFont }>;

/** The fonts that some text asks for, by whether they are bold: a part of a font with no letters in it is no font. */
async function embedFonts(
  doc: PDFDocument,
  sheets: readonly Sheet[],
  typeface: FontTypeface,
): Promise<Fonts> {
  const texts = sheets.flatMap(({ inks }) => inks.filter((ink) => ink.kind === 'text'));
  const asked = new Set(texts.filter((ink) => letters(ink, typeface) !== '').map(isBold));
  const fonts = new Map<boolean, { name: PDFName; font: PDFFont }>();
  for (const bold of [false, true].filter((one) => asked.has(one))) {
    const { bytes, postscriptName } = bold ? typeface.bold : typeface.regular;
    // six capitals before the name say that it is a part of a font, other ones for another part (ISO 32000-1, 9.6.4)
    const customName = `${bold ? 'AAAAAB' : 'AAAAAA'}+${postscriptName}`;
    const font = await doc.embedFont(bytes, { subset: true, customName, features: FEATURES });
    fonts.set(bold, { name: PDFName.of(bold ? 'Bold' : 'Regular'), font });
  }
  return fonts;
}

function operators(ink: Ink, typeface: FontTypeface, fonts: Fonts): PDFOperator[] {
  if (ink.kind === 'text') return textOperators(ink, typeface, fonts);
  if (ink.kind === 'circle')
    return [...pen(ink.pen), ...path(circleChain(ink.centre, ink.radius), true), stroke()];
  const drawn = path(ink.chain, ink.closed);
  if (!ink.fill) return [...pen(ink.pen), ...drawn, stroke()];
  return [setFillingGrayscaleColor(ink.fill === 'ink' ? 0 : 1), ...drawn, fill()];
}

/** A circle as two half turns. */
function circleChain(centre: Point, radius: number): Chain {
  const [right, left]: readonly [Point, Point] = [
    [centre[0] + radius, centre[1]],
    [centre[0] - radius, centre[1]],
  ];
  return [arc(right, left, centre, 1), arc(left, right, centre, 1)];
}

function pen(kind: Pen): PDFOperator[] {
  const { width, dashes } = PENS[kind];
  return [setLineWidth(width), setDashPattern([...dashes], 0)];
}

function path(chain: Chain, closed: boolean): PDFOperator[] {
  const [first] = chain;
  if (!first) return [];
  const pieces = chain.flatMap((s) =>
    s.kind === 'line'
      ? [lineTo(...places(s.to))]
      : arcBeziers(s).map(([c, d, end]) => appendBezierCurve(...places(c), ...places(d), ...places(end))),
  );
  return [moveTo(...places(first.from)), ...pieces, ...(closed ? [closePath()] : [])];
}

function places(p: Point): [number, number] {
  return [Number(decimal(p[0])), Number(decimal(p[1]))];
}

function textOperators(ink: Text, typeface: FontTypeface, fonts: Fonts): PDFOperator[] {
  const text = letters(ink, typeface);
  const used = fonts.get(isBold(ink));
  if (!used || text === '') return [];
  const angle = (ink.angle * Math.PI) / 180;
  const [cos, sin] = [Number(decimal(Math.cos(angle), 9)), Number(decimal(Math.sin(angle), 9))];
  const before =
    { start: 0, middle: 0.5, end: 1 }[ink.anchor] * typeface.width(ink.text, ink.height, ink.bold);
  const [x, y] = places([ink.at[0] - before * cos, ink.at[1] - before * sin]);
  return [
    setFillingGrayscaleColor(0),
    beginText(),
    setFontAndSize(used.name, Number(decimal(typeface.size(ink.height, ink.bold)))),
    setTextMatrix(cos, sin, -sin, cos, x, y),
    showText(used.font.encodeText(text)),
    endText(),
  ];
}
