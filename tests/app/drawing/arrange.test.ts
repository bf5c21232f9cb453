import { describe, expect, test } from 'vitest';
import type { Point } from '../../../models/curves/segment.ts';
import { arrange } from '../../../src/app/drawing/arrange.ts';
import type { Layout, Mark } from '../../../src/app/drawing/compose.ts';
import { dimensions } from '../../../src/app/drawing/dimensions.ts';
import { drawingShapes } from '../../../src/app/drawing/drawingShapes.ts';
import { partExtent } from '../../../src/app/drawing/partOnSheet.ts';
import type { Size } from '../../../src/app/drawing/placeViews.ts';
import { type AcceptedDesign, acceptDesign } from '../../../src/design/acceptDesign.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { designWith, someDesigns } from './someDesigns.ts';

const SIZES: readonly Size[] = [
  { width: 640, height: 240 },
  { width: 700, height: 330 },
  { width: 1200, height: 500 },
];

/** A fixed-width face's characters are six tenths of its size wide (from memory: Courier 0.600, DejaVu Sans Mono 0.602). */
const textWidth = (text: string) => 12 * 0.602 * [...text].length;

function layoutOf({ curves, text }: AcceptedDesign, size: Size, selected?: string): Layout {
  const layout = arrange(
    size,
    partExtent(drawingShapes(curves, text, 'drilled')),
    dimensions(curves, text),
    selected,
  );
  if (!layout) throw new Error(`nothing drawn at ${size.width}×${size.height}`);
  return layout;
}

/** Corners of a label's text as it stands, turned. */
function corners({ label }: Mark): readonly Point[] {
  const turn = (label.turn * Math.PI) / 180;
  const [w, h] = [textWidth(label.text) / 2, 7];
  return (
    [
      [-w, -h],
      [w, -h],
      [w, h],
      [-w, h],
    ] as const
  ).map(([u, v]) => [
    label.middle[0] + u * Math.cos(turn) - v * Math.sin(turn),
    label.middle[1] + u * Math.sin(turn) + v * Math.cos(turn),
  ]);
}

/** Whether two convex polygons keep apart: some side's normal separates them. */
function apart(a: readonly Point[], b: readonly Point[]): boolean {
  return [a, b].some((polygon) =>
    polygon.some((p, i) => {
      const q = polygon[(i + 1) % polygon.length] as Point;
      const n: Point = [q[1] - p[1], p[0] - q[0]];
      const along = (points: readonly Point[]) => points.map(([x, y]) => n[0] * x + n[1] * y);
      return Math.max(...along(a)) <= Math.min(...along(b)) || Math.max(...along(b)) <= Math.min(...along(a));
    }),
  );
}

/** Everything that would keep a sheet from being read, in words. */
function faults(name: string, accepted: AcceptedDesign, size: Size, layout: Layout): readonly string[] {
  const where = `${name} at ${size.width}×${size.height}`;
  const isOff = ([x, y]: Point) => x < 0 || y < 0 || x > size.width || y > size.height;
  const labels = layout.marks.map((mark) => ({ mark, text: mark.label.text, box: corners(mark) }));
  const found: string[] = [];
  labels.forEach(({ mark, text, box }, i) => {
    if (box.some(isOff)) found.push(`${where}: ${text} off the sheet`);
    for (const other of labels.slice(i + 1))
      if (!apart(box, other.box)) found.push(`${where}: ${text} over ${other.text}`);
    for (const other of labels) {
      if (other.mark !== mark && other.mark.lines.some(([a, b]) => !apart(box, [a, b])))
        found.push(`${where}: ${text} on a line of ${other.text}`);
    }
  });
  // the part itself is on the sheet, and no view covers another
  const part = partExtent(drawingShapes(accepted.curves, accepted.text, 'drilled'));
  const boxes = (['plan', 'elevation', 'section'] as const).flatMap((view) => {
    const at = layout.views[view];
    if (!at) return [];
    const { left, right, low, high } = part[view];
    const on = (a: number, b: number): Point => [at.x + at.scale * a, at.y - at.scale * b];
    return [[on(left, low), on(right, low), on(right, high), on(left, high)]];
  });
  if (boxes.flat().some(isOff)) found.push(`${where}: the part runs off the sheet`);
  boxes.forEach((box, i) => {
    if (boxes.slice(i + 1).some((other) => !apart(box, other))) found.push(`${where}: views overlap`);
  });
  return found;
}

const cases = Object.entries(someDesigns).flatMap(([name, accepted]) =>
  SIZES.map((size) => [`${name} at ${size.width}×${size.height}`, name, accepted, size] as const),
);

describe('labels keep clear of each other, of lines and of the sheet’s sides', () => {
  test.each(cases)('%s', (_title, name, accepted, size) => {
    const layout = layoutOf(accepted, size);
    expect(faults(name, accepted, size, layout)).toEqual([]);
    expect(layout.marks.length, 'enough dimensions to be of use').toBeGreaterThanOrEqual(10);
    const there = new Set(layout.marks.map((m) => m.dimension.path));
    for (const path of ['footprint.length', 'footprint.depthCentre', 'top.thickness', 'top.tip'])
      expect(there, `${path} is never left out`).toContain(path);
  });

  test('40 random designs at every size', { timeout: 60_000 }, () => {
    const found = acceptedDesigns(40, 5).accepted.flatMap((accepted, i) =>
      SIZES.flatMap((size) => faults(`random ${i}`, accepted, size, layoutOf(accepted, size))),
    );
    expect(found).toEqual([]);
  });
});

test.each(Object.entries(someDesigns))(
  '%s has every dimension and the section where there is room',
  (_name, accepted) => {
    const layout = layoutOf(accepted, { width: 1200, height: 500 });
    const wanted = dimensions(accepted.curves, accepted.text).map((d) => d.path);
    expect(new Set(layout.marks.map((m) => m.dimension.path))).toEqual(new Set(wanted));
    expect(layout.views.section).toBeDefined();
  },
);

test('all views share one scale and stand in line: elevation under the plan, section beside it', () => {
  for (const accepted of Object.values(someDesigns)) {
    const { plan, elevation, section } = layoutOf(accepted, { width: 1200, height: 500 }).views;
    expect(elevation.x).toBe(plan.x);
    expect(elevation.y).toBeGreaterThan(plan.y);
    expect(section?.y).toBe(elevation.y);
    expect([elevation.scale, section?.scale]).toEqual([plan.scale, plan.scale]);
  }
});

test('smaller sheets show fewer dimensions, never the drawing alone too small', () => {
  const usual = someDesigns.usual as AcceptedDesign;
  const counts = [
    { width: 300, height: 130 },
    { width: 640, height: 240 },
    { width: 1200, height: 500 },
  ].map((size) => {
    const layout = layoutOf(usual, size);
    expect(faults('usual', usual, size, layout)).toEqual([]);
    expect(layout.views.plan.scale * usual.design.footprint.length).toBeGreaterThan(0.3 * size.width);
    return layout.marks.length;
  });
  expect(counts).toEqual([...counts].sort((a, b) => a - b));
  expect(counts[0]).toBeLessThan(counts[2] as number);
});

test('the slot’s depth stands on every sheet of a small screen, whatever the wing', () => {
  for (const tip of [2.5, 3])
    for (const rise of [1.2, 3])
      for (const width of [620, 640, 680, 700, 740])
        for (const height of [200, 220, 240, 260]) {
          const accepted = acceptDesign(designWith({ 'top.tip': tip, 'top.wingRise': rise }));
          const there = layoutOf(accepted, { width, height }).marks.map((m) => m.dimension.path);
          expect(there, `tip ${tip}, rise ${rise}, ${width}×${height}`).toContain('saddle.depth');
        }
});

test('a selected field’s dimension is drawn even where it would be left out', () => {
  const usual = someDesigns.usual as AcceptedDesign;
  const size = { width: 640, height: 240 };
  const shown = (selected?: string) => layoutOf(usual, size, selected).marks.map((m) => m.dimension.path);
  expect(shown()).not.toContain('footprint.sweepLength');
  expect(shown('footprint.sweepLength')).toContain('footprint.sweepLength');
  expect(faults('usual', usual, size, layoutOf(usual, size, 'footprint.sweepLength'))).toEqual([]);
  // one that is there already moves nothing
  expect(layoutOf(usual, size, 'top.tip')).toEqual(layoutOf(usual, size));
});

test('no room, no drawing', () => {
  const { curves, text } = someDesigns.usual as AcceptedDesign;
  const part = partExtent(drawingShapes(curves, text, 'drilled'));
  for (const size of [
    { width: 0, height: 0 },
    { width: 40, height: 300 },
  ])
    expect(arrange(size, part, dimensions(curves, text), undefined)).toBeUndefined();
});

test('arrowheads of a linear dimension stand on the ends of what it measures', () => {
  const usual = someDesigns.usual as AcceptedDesign;
  const layout = layoutOf(usual, { width: 1200, height: 500 });
  const tips = (path: string) =>
    layout.marks.find((m) => m.dimension.path === path)?.arrows.map((a) => a.tip) ?? [];
  const distance = ([a, b]: readonly Point[]) => (a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : Number.NaN);
  const { scale } = layout.views.plan;
  expect(distance(tips('footprint.length')) / scale).toBeCloseTo(153, 9);
  expect(distance(tips('saddle.slotLength')) / scale).toBeCloseTo(74, 9);
  // on the long profile's line, where a domed glue face stands a hair higher than at the tip's middle
  expect(distance(tips('top.tip')) / scale).toBeCloseTo(3, 2);
  expect(distance(tips('pins.spread')) / scale).toBeCloseTo(57, 9);
  // on the two lines of the angle, seen from the slot's middle
  const { x, y } = layout.views.plan;
  const rays = tips('saddle.angle').map((p): Point => [p[0] - x, y - p[1]]);
  const [p, q] = rays as [Point, Point];
  const between = Math.atan2(p[0] * q[1] - p[1] * q[0], p[0] * q[0] + p[1] * q[1]);
  expect((between * 180) / Math.PI).toBeCloseTo(2.9, 9);
});
