import { describe, expect, test } from 'vitest';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { alongOutline, overTop, tipLines } from '../../../src/report/findings/places.ts';
import { judgedWith } from './sound.ts';

/** How far lines are drawn over the wood, mm; how far they may be off that. */
const [LIFT, OFF] = [0.2, 0.03];
/** A column is looked up so far inside the outline, mm: at the outline itself it is wood or none. */
const INSIDE = 1e-5;

describe.each([
  ['round', { 'top.edge': 'round', 'top.edgeSize': 1.2 }],
  ['chamfer', { 'top.edge': 'chamfer', 'top.edgeSize': 1.2 }],
  ['none', { 'top.edge': 'none' }],
  ['wings that slope', { 'top.edge': 'round', 'top.edgeSize': 1, 'top.wingRise': 1.5 }],
])('with an edge: %s', (_, changes) => {
  const { accepted } = judgedWith({ ...changes, 'top.tip': 3.5 });
  const { curves, design } = accepted;
  const wood = surfaceOf(curves, 'drilled');
  const half = design.footprint.length / 2;

  test('lines round the tips and along the outline lie on the wood that the edge leaves', () => {
    const lines = [...tipLines(curves), alongOutline(curves, curves.outline)];
    let looked = 0;
    for (const [x, y, z] of lines.flat()) {
      const pull = 1 - INSIDE / half;
      const stretch = wood.columns(x * pull, y * pull)[0];
      // the outline swells and hollows: pulled toward the middle a few places lie a little outside the wood
      if (!stretch) continue;
      looked++;
      expect(Math.abs(z - LIFT - stretch[1]), `${x}, ${y}`).toBeLessThan(OFF);
    }
    expect(looked).toBeGreaterThan(0.8 * lines.flat().length);
  });

  test('at the tip itself it is the tip less its edge', () => {
    const [right] = tipLines(curves);
    const end = right?.reduce((a, b) => (b[0] > a[0] ? b : a)) ?? [0, 0, 0];
    const [[, , uncut]] = overTop({ ...curves, edge: { kind: 'none' } }, [[half, 0]]) as [
      readonly [number, number, number],
    ];
    const size = design.top.edge === 'none' ? 0 : design.top.edgeSize;
    // a sloping top is touched a little further in
    expect(Math.abs(uncut - end[2] - size)).toBeLessThan(0.2);
  });
});
