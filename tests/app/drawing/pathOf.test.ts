import { describe, expect, test } from 'vitest';
import { type Arc, arc, line, type Point, pointAt, sweepOf } from '../../../models/curves/segment.ts';
import { pathOf } from '../../../src/app/drawing/pathOf.ts';
import { circle } from '../../../src/app/drawing/shape.ts';
import type { View } from '../../../src/app/drawing/view.ts';

const view: View = { scale: 4, x: 300, y: 120 };

interface SvgArc {
  readonly centre: Point;
  readonly radii: Point;
  /** Radians, clockwise on the sheet (y down). */
  readonly start: number;
  readonly sweep: number;
  readonly tilt: number;
}

/** From an arc's ends to its centre, as the W3C's SVG 1.1 implementation notes, F.6.5, have it. */
function readArc(d: string): SvgArc {
  const numbers = (d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
  const [x1, y1, rx, ry, degrees, large, sweepFlag, x2, y2] = numbers as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const tilt = (degrees * Math.PI) / 180;
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  const [hx, hy] = [(x1 - x2) / 2, (y1 - y2) / 2];
  const [px, py] = [c * hx + s * hy, -s * hx + c * hy];
  const under = (rx * ry) ** 2 - (rx * py) ** 2 - (ry * px) ** 2;
  const root =
    (large === sweepFlag ? -1 : 1) * Math.sqrt(Math.max(0, under / ((rx * py) ** 2 + (ry * px) ** 2)));
  const [qx, qy] = [(root * rx * py) / ry, (-root * ry * px) / rx];
  const start = Math.atan2((py - qy) / ry, (px - qx) / rx);
  let sweep = Math.atan2((-py - qy) / ry, (-px - qx) / rx) - start;
  if (sweepFlag === 1 && sweep < 0) sweep += 2 * Math.PI;
  if (sweepFlag === 0 && sweep > 0) sweep -= 2 * Math.PI;
  return {
    centre: [c * qx - s * qy + (x1 + x2) / 2, s * qx + c * qy + (y1 + y2) / 2],
    radii: [rx, ry],
    start,
    sweep,
    tilt,
  };
}

function onArc({ centre, radii, start, sweep, tilt }: SvgArc, share: number): Point {
  const a = start + share * sweep;
  const [u, v] = [radii[0] * Math.cos(a), radii[1] * Math.sin(a)];
  return [
    centre[0] + u * Math.cos(tilt) - v * Math.sin(tilt),
    centre[1] + u * Math.sin(tilt) + v * Math.cos(tilt),
  ];
}

const at = (centre: Point, radius: number, from: number, to: number, turn: 1 | -1): Arc => {
  const on = (a: number): Point => [centre[0] + radius * Math.cos(a), centre[1] + radius * Math.sin(a)];
  return arc(on(from), on(to), centre, turn);
};

describe('an arc in the path is the same arc', () => {
  test.each([
    ['a corner, counter-clockwise', at([10, 5], 6, -1.5, 0.1, 1)],
    ['a hollow, clockwise', at([-20, 30], 25, 4.4, 3.6, -1)],
    ['a half turn', at([3, 3], 1.6, -Math.PI / 2, Math.PI / 2, 1)],
    ['more than a half turn', at([0, 0], 8, 0.3, -1.1, 1)],
    ['a flat crown', at([0, -390], 400, 1.68, 1.46, -1)],
  ])('%s', (_what, segment) => {
    const read = readArc(pathOf([segment], view, false));
    for (const share of [0, 0.25, 0.5, 0.9, 1]) {
      const [x, y] = pointAt(segment, share);
      const [sx, sy] = onArc(read, share);
      // ends are written to a hundredth of a pixel; the centre of a flat arc magnifies that
      expect(sx, `x at ${share}`).toBeCloseTo(view.x + view.scale * x, 1);
      expect(sy, `y at ${share}`).toBeCloseTo(view.y - view.scale * y, 1);
    }
    expect(Math.abs(read.sweep), 'the angle it turns through').toBeCloseTo(sweepOf(segment), 2);
  });

  test('turned and shortened across, it is the ellipse of every point turned and shortened', () => {
    const segment = at([35, 0], 1.6, -Math.PI / 2, Math.PI / 2, 1);
    const pose = { angle: 0.07, across: Math.cos(0.2) };
    const read = readArc(pathOf([segment], { ...view, scale: 40 }, false, pose));
    for (const share of [0.1, 0.5, 0.8]) {
      const [u, v] = pointAt(segment, share);
      const [x, y] = [
        u * Math.cos(0.07) - v * pose.across * Math.sin(0.07),
        u * Math.sin(0.07) + v * pose.across * Math.cos(0.07),
      ];
      const [sx, sy] = onArc(read, share);
      expect(sx).toBeCloseTo(view.x + 40 * x, 1);
      expect(sy).toBeCloseTo(view.y - 40 * y, 1);
    }
  });
});

test('lines stay lines, the second axis points up, and a closed chain closes', () => {
  const chain = [line([0, 0], [10, 0]), line([10, 0], [10, 2.5]), line([10, 2.5], [0, 0])];
  expect(pathOf(chain, view, true)).toBe('M300 120L340 120L340 110L300 120Z');
  expect(pathOf([], view, true)).toBe('');
});

test('a circle is two half turns of its radius', () => {
  expect(pathOf(circle([0, 0], 2), view, true)).toBe('M308 120A8 8 0 0 0 292 120A8 8 0 0 0 308 120Z');
});
