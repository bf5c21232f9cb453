import { type Chain, type Point, type Segment, sweepOf } from '../../models/curves/segment.ts';
import { PENS } from '../sheets/sheet.ts';
import { asciiText } from './asciiText.ts';
import { decimal } from './decimal.ts';

/** One thing of a drawing, mm in the part's own plan: no paper, no scale. */
export type DxfEntity =
  | { readonly kind: 'chain'; readonly chain: Chain; readonly closed: boolean }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'point'; readonly at: Point };

export interface DxfLayer {
  /** Capitals, figures and `_`, at most 31 of them: what release 12 allows. */
  readonly name: string;
  /** Of the format's own numbering: 1 red, 3 green, 5 blue, 7 black or white. */
  readonly colour: number;
  readonly linetype: 'CONTINUOUS' | 'CENTER';
  readonly entities: readonly DxfEntity[];
}

/** One pair of lines of a DXF: what the value means, and the value. */
type Pair = readonly [code: number, value: string];

/** $INSUNITS for millimetres. Younger than release 12, whose readers pass over it: hence the remark in words as well. */
const MILLIMETRES = '4';

/**
 * A DXF of release 12 (AC1009), the one that everything reads, in millimetres. A chain is a POLYLINE whose arcs are
 * bulges (tan of a quarter of the angle turned through), so arcs stay arcs.
 *
 * @param remarks stand at the head of the file, a line each; what isn't ASCII is put in its nearest likeness
 */
export function writeDxf(layers: readonly DxfLayer[], remarks: readonly string[]): string {
  for (const { name } of layers) {
    if (!/^[A-Z0-9_]{1,31}$/.test(name)) throw new Error(`${name} can't be a layer's name in release 12`);
  }
  const pairs: readonly Pair[] = [
    ...['Units: mm', ...remarks].map((remark): Pair => [999, asciiText(remark).slice(0, 255)]),
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
      [9, '$INSUNITS'],
      [70, MILLIMETRES],
    ]),
    ...section('TABLES', [
      ...table('LTYPE', LINETYPES),
      ...table(
        'LAYER',
        layers.map(({ name, colour, linetype }) => [
          [0, 'LAYER'],
          [2, name],
          [70, '0'],
          [62, decimal(colour, 0)],
          [6, linetype],
        ]),
      ),
      ...table('STYLE', [STYLE]),
    ]),
    ...section('BLOCKS', []),
    ...section(
      'ENTITIES',
      layers.flatMap(({ name, entities }) => entities.flatMap((one) => entity(one, name))),
    ),
    [0, 'EOF'],
  ];
  return pairs.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
}

function section(name: string, pairs: readonly Pair[]): readonly Pair[] {
  return [[0, 'SECTION'], [2, name], ...pairs, [0, 'ENDSEC']];
}

function table(name: string, entries: readonly (readonly Pair[])[]): readonly Pair[] {
  return [[0, 'TABLE'], [2, name], [70, String(entries.length)], ...entries.flat(), [0, 'ENDTAB']];
}

const DASHES = PENS.centre.dashes;

const LINETYPES: readonly (readonly Pair[])[] = [
  linetype('CONTINUOUS', 'Solid line', []),
  linetype('CENTER', 'Center ____ _ ____ _ ____', DASHES),
];

/** @param dashes dash, gap, dash … in mm: gaps are negative here */
function linetype(name: string, words: string, dashes: readonly number[]): readonly Pair[] {
  return [
    [0, 'LTYPE'],
    [2, name],
    [70, '0'],
    [3, words],
    [72, '65'],
    [73, String(dashes.length)],
    [40, decimal(dashes.reduce((a, b) => a + b, 0))],
    ...dashes.map((dash, i): Pair => [49, decimal(i % 2 === 0 ? dash : -dash)]),
  ];
}

/** The style that release 12 looks for, though nothing is written here. */
const STYLE: readonly Pair[] = [
  [0, 'STYLE'],
  [2, 'STANDARD'],
  [70, '0'],
  [40, '0'],
  [41, '1'],
  [50, '0'],
  [71, '0'],
  [42, '2.5'],
  [3, 'txt'],
  [4, ''],
];

function entity(one: DxfEntity, layer: string): readonly Pair[] {
  const head = (kind: string): readonly Pair[] => [
    [0, kind],
    [8, layer],
  ];
  switch (one.kind) {
    case 'chain':
      return polyline(one.chain, one.closed, layer);
    case 'circle':
      return [...head('CIRCLE'), ...place(one.centre), [40, number(one.radius)]];
    case 'line':
      return [...head('LINE'), ...place(one.from), ...place(one.to, 1)];
    case 'point':
      return [...head('POINT'), ...place(one.at)];
  }
}

function polyline(chain: Chain, closed: boolean, layer: string): readonly Pair[] {
  const last = chain[chain.length - 1];
  if (!last) return [];
  const vertex = (at: Point, bulge: number): readonly Pair[] => [
    [0, 'VERTEX'],
    [8, layer],
    ...place(at),
    [42, decimal(bulge, 12)],
  ];
  return [
    [0, 'POLYLINE'],
    [8, layer],
    [66, '1'],
    ...place([0, 0]),
    [70, closed ? '1' : '0'],
    ...chain.flatMap((s) => vertex(s.from, bulgeOf(s))),
    ...(closed ? [] : vertex(last.to, 0)),
    [0, 'SEQEND'],
    [8, layer],
  ];
}

/** Tangent of a quarter of the angle that an arc turns through, positive counter-clockwise; 0 of a line. */
function bulgeOf(s: Segment): number {
  return s.kind === 'line' ? 0 : s.turn * Math.tan(sweepOf(s) / 4);
}

/** A point in the plane z = 0. @param end 1 for a line's second point */
function place([x, y]: Point, end: 0 | 1 = 0): readonly Pair[] {
  return [
    [10 + end, number(x)],
    [20 + end, number(y)],
    [30 + end, '0'],
  ];
}

/** A nanometre is enough for area and length to agree with the curve's to 1e-6. */
function number(mm: number): string {
  return decimal(mm, 9);
}
