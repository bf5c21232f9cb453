import { describe, expect, test } from 'vitest';
import { arc, type Point, pointAt, sweepOf } from '../../models/curves/segment.ts';
import { writeSvg } from '../../src/files/svg.ts';
import { xmlText } from '../../src/files/xmlText.ts';
import { type Ink, PAPERS, type Sheet } from '../../src/sheets/sheet.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { testSheet, words } from '../support/someSheets.ts';

const sheetOf = (...inks: Ink[]): Sheet => ({ id: 's', title: 'S', paper: PAPERS.A4, scale: 1, inks });
const svgOf = (...inks: Ink[]) => writeSvg(sheetOf(...inks), dejaVu);

test('is as large as its paper, a unit a millimetre', () => {
  expect(svgOf()).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"');
  const letter = writeSvg({ ...sheetOf(), paper: PAPERS.Letter }, dejaVu);
  expect(letter).toContain('width="279.4mm" height="215.9mm" viewBox="0 0 279.4 215.9"');
});

describe('an arc', () => {
  /**
   * The centre and sweep (radians, positive where y runs down clockwise) of an elliptical arc command between two
   * ends, for equal radii: SVG 1.1, appendix F.6.5, equations 5.1 to 5.6.
   */
  function centreOf(from: Point, to: Point, r: number, large: boolean, sweep: boolean) {
    const [x1, y1] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
    const rest = Math.max(0, r ** 4 - r * r * (x1 * x1 + y1 * y1)) / (r * r * (x1 * x1 + y1 * y1));
    const k = (large === sweep ? -1 : 1) * Math.sqrt(rest);
    const centre: Point = [k * y1 + (from[0] + to[0]) / 2, -k * x1 + (from[1] + to[1]) / 2];
    const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
    const end = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
    const raw = (end - start) % (2 * Math.PI);
    if (sweep) return { centre, start, sweep: raw < 0 ? raw + 2 * Math.PI : raw };
    return { centre, start, sweep: raw > 0 ? raw - 2 * Math.PI : raw };
  }

  test.each(
    [1, -1].flatMap((turn) => [0.3, 1.5, 3.1, 3.2, 5.5].map((sweep) => [turn as 1 | -1, sweep] as const)),
  )('that turns %i by %f stays where it was', (turn, sweep) => {
    const centre: Point = [150, 90];
    const on = (a: number): Point => [150 + 60 * Math.cos(a), 90 + 60 * Math.sin(a)];
    const a = arc(on(0.4), on(0.4 + turn * sweep), centre, turn);
    const chain = [a];
    const svg = svgOf({ kind: 'line', layer: 'outline', pen: 'outline', chain, closed: false });
    const [, x1, y1, rx, ry, large, clockwise, x2, y2] = (
      / d="M(\S+) (\S+?)A(\S+) (\S+) 0 ([01]) ([01]) (\S+) (\S+)"/.exec(svg) ?? []
    ).map(Number) as [number, number, number, number, number, number, number, number, number];
    expect([rx, ry]).toEqual([60, 60]);
    const read = centreOf([x1, y1], [x2, y2], rx, large === 1, clockwise === 1);
    expect(read.centre[0]).toBeCloseTo(150, 3);
    expect(210 - read.centre[1]).toBeCloseTo(90, 3);
    expect(Math.abs(read.sweep)).toBeCloseTo(sweepOf(a), 4);
    const half = read.start + read.sweep / 2;
    const middle = pointAt(a, 0.5);
    expect(read.centre[0] + rx * Math.cos(half)).toBeCloseTo(middle[0], 3);
    expect(210 - read.centre[1] - rx * Math.sin(half)).toBeCloseTo(middle[1], 3);
  });
});

test('each layer is a group with an id of its own; after paper that hides something they begin anew', () => {
  const [mark] = testSheet.inks as [Ink];
  const paper: Ink = {
    ...(mark as Extract<Ink, { kind: 'line' }>),
    layer: 'text',
    closed: true,
    fill: 'paper',
  };
  const ids = (...inks: Ink[]) =>
    [...svgOf(...inks).matchAll(/<g id="([^"]+)" data-layer="([^"]+)">/g)].map(
      ([, id, layer]) => `${id} ${layer}`,
    );
  const text = words('a', [1, 1]);
  expect(ids(text, mark, text, mark)).toEqual(['s-text text', 's-marks marks']);
  expect(ids(text, mark, paper, text, mark)).toEqual([
    's-text text',
    's-marks marks',
    's-text-2 text',
    's-marks-2 marks',
  ]);
});

test('pens keep their width and dashes; what is filled has no line round it', () => {
  const svg = writeSvg(testSheet, dejaVu);
  expect(svg).toContain('stroke-width="0.18" stroke-dasharray="6 1 0.6 1"');
  expect(svg).toContain('d="M200 110L210 112L210 108L200 110Z" fill="#000" stroke="none"');
  expect(svg.match(/<circle cx="90" cy="110" r="20" stroke-width="0.25"\/>/g)).toHaveLength(1);
});

test('text is as high, anchored and turned as asked, and fits the width it was laid out for', () => {
  const svg = svgOf(words('Halved', [150, 60], { anchor: 'middle', angle: 90, bold: true, height: 3.5 }));
  expect(svg).toContain(`x="150" y="150" font-size="${Number(((3.5 * 2048) / 1493).toFixed(5))}"`);
  expect(svg).toContain(`textLength="${Number(dejaVu.width('Halved', 3.5, true).toFixed(5))}"`);
  expect(svg).toContain('text-anchor="middle" font-weight="bold" transform="rotate(-90 150 150)"');
});

test('blank text leaves no trace', () => {
  expect(svgOf(words('', [1, 1]), words(' \n', [1, 1]))).not.toContain('<text');
});

test('text for XML', () => {
  expect(xmlText(`<a href="b">O'B & 🪵</a>`)).toBe('&lt;a href=&quot;b&quot;&gt;O&apos;B &amp; 🪵&lt;/a&gt;');
  expect(xmlText('a\u0000\u0007\r\nb\ud83e\ufffe')).toBe('a b\ufffd\ufffd');
});
