import { type Chain, type Point, type Segment, sweepOf } from '../../models/curves/segment.ts';
import { type Ink, type Layer, PENS, type Sheet } from '../sheets/sheet.ts';
import type { FontTypeface } from '../sheets/typeface.ts';
import { decimal } from './decimal.ts';
import { xmlText } from './xmlText.ts';

/**
 * One sheet as SVG text at its own scale: size in mm, one unit of the view box a millimetre, y down from the upper
 * edge. Arcs are arcs. Each layer is a group with the id `SHEET-LAYER` (and `SHEET-LAYER-2` for what comes after paper
 * that hides something).
 *
 * Text is written whole, also what the typeface lacks: the viewer has other fonts. It is told to fit the width that
 * the sheet was laid out for.
 */
export function writeSvg(sheet: Sheet, typeface: FontTypeface): string {
  const { width, height } = sheet.paper;
  const [w, h] = [decimal(width), decimal(height)];
  const family = `'${typeface.family}', 'Bitstream Vera Sans', Verdana, sans-serif`;
  const seen = new Map<Layer, number>();
  const groups = gathered(sheet.inks).map(({ layer, inks }) => {
    const count = (seen.get(layer) ?? 0) + 1;
    seen.set(layer, count);
    const id = xmlText(`${sheet.id}-${layer}${count > 1 ? `-${count}` : ''}`);
    const elements = inks.map((ink) => element(ink, height, typeface)).filter((one) => one !== '');
    return `<g id="${id}" data-layer="${layer}">\n${elements.join('\n')}\n</g>`;
  });
  return `${[
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" fill="none" stroke="#000" stroke-linejoin="round" font-family="${family}">`,
    `<title>${xmlText(sheet.title)}</title>`,
    ...groups,
    '</svg>',
  ].join('\n')}\n`;
}

/**
 * What is drawn of each layer, in the order in which layers first come. Ink over ink looks alike in any order; paper
 * hides what was drawn before it, so from there on layers are gathered anew.
 */
function gathered(inks: readonly Ink[]): readonly { readonly layer: Layer; readonly inks: readonly Ink[] }[] {
  const out: { layer: Layer; inks: Ink[] }[] = [];
  let stretch = 0;
  for (const ink of inks) {
    if (ink.kind === 'line' && ink.fill === 'paper') stretch = out.length;
    const group = out.slice(stretch).find(({ layer }) => layer === ink.layer);
    if (group) group.inks.push(ink);
    else out.push({ layer: ink.layer, inks: [ink] });
  }
  return out;
}

function element(ink: Ink, height: number, typeface: FontTypeface): string {
  const place = ([x, y]: Point): string => `${decimal(x)} ${decimal(height - y)}`;
  if (ink.kind === 'text') return textElement(ink, height, typeface);
  if (ink.kind === 'circle') {
    const [x, y] = [decimal(ink.centre[0]), decimal(height - ink.centre[1])];
    return `<circle cx="${x}" cy="${y}" r="${decimal(ink.radius)}"${pen(ink.pen)}/>`;
  }
  const d = path(ink.chain, ink.closed, place);
  if (!ink.fill) return `<path d="${d}"${pen(ink.pen)}/>`;
  return `<path d="${d}" fill="${ink.fill === 'ink' ? '#000' : '#fff'}" stroke="none"/>`;
}

function pen(kind: keyof typeof PENS): string {
  const { width, dashes } = PENS[kind];
  const dashed = dashes.length > 0 ? ` stroke-dasharray="${dashes.map((d) => decimal(d)).join(' ')}"` : '';
  return ` stroke-width="${decimal(width)}"${dashed}`;
}

function path(chain: Chain, closed: boolean, place: (p: Point) => string): string {
  const [first] = chain;
  if (!first) return '';
  return `M${place(first.from)}${chain.map((s) => piece(s, place)).join('')}${closed ? 'Z' : ''}`;
}

function piece(s: Segment, place: (p: Point) => string): string {
  if (s.kind === 'line') return `L${place(s.to)}`;
  // y runs down here: what turns counter-clockwise on the sheet is SVG's flag 0
  const flags = `${sweepOf(s) > Math.PI ? 1 : 0} ${s.turn === 1 ? 0 : 1}`;
  return `A${decimal(s.radius)} ${decimal(s.radius)} 0 ${flags} ${place(s.to)}`;
}

function textElement(ink: Extract<Ink, { kind: 'text' }>, height: number, typeface: FontTypeface): string {
  if (ink.text.trim() === '') return '';
  const [x, y] = [decimal(ink.at[0]), decimal(height - ink.at[1])];
  const size = decimal(typeface.size(ink.height, ink.bold));
  const length = decimal(typeface.width(ink.text, ink.height, ink.bold));
  const turned = ink.angle === 0 ? '' : ` transform="rotate(${decimal(-ink.angle)} ${x} ${y})"`;
  const weight = ink.bold ? ' font-weight="bold"' : '';
  const anchor = ink.anchor === 'start' ? '' : ` text-anchor="${ink.anchor}"`;
  return `<text x="${x}" y="${y}" font-size="${size}" textLength="${length}" lengthAdjust="spacingAndGlyphs"${anchor}${weight}${turned} fill="#000" stroke="none" xml:space="preserve">${xmlText(ink.text)}</text>`;
}
