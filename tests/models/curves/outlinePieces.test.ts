import { expect, test } from 'vitest';
import { levels } from '../../../models/curves/outline.ts';
import { halfLengthOf, outlinePieces, turnsOf, wingEnd } from '../../../models/curves/outlinePieces.ts';
import { someDesigns } from '../../app/drawing/someDesigns.ts';
import { acceptedDesigns } from '../../support/designs.ts';

const all = [...Object.values(someDesigns), ...acceptedDesigns(150, 12).accepted];

test('an outline taken apart gives back the footprint it was drawn from', { timeout: 60_000 }, () => {
  for (const { curves, text, design } of all) {
    const f = design.footprint;
    const about = JSON.stringify(f);
    const at = levels(f);
    if ('code' in at) throw new Error(`levels refused ${about}`);
    const half = halfLengthOf(curves.outline);
    expect(half, about).toBeCloseTo(f.length / 2, 8);
    const { front, back, tip, frontCorner, backCorner } = outlinePieces(curves.outline, text);
    expect(front.middle, about).toBeCloseTo(at.frontMiddle, 8);
    expect(back.middle, about).toBeCloseTo(at.backMiddle, 8);
    expect(wingEnd(front, half)[1], about).toBeCloseTo(at.frontWing, 6);
    expect(wingEnd(back, half)[1], about).toBeCloseTo(at.backWing, 6);
    expect(tip.length, about).toBe(f.tip === 'round' ? 2 : 1);
    for (const [corner, radius] of [
      [frontCorner, f.cornerFront],
      [backCorner, f.cornerBack],
    ] as const) {
      if (f.tip === 'round') expect(corner).toBeUndefined();
      else expect(corner?.kind === 'arc' && corner.radius, about).toBeCloseTo(radius, 8);
    }
    for (const edge of [front, back]) {
      const turns = turnsOf(edge);
      expect(turns !== undefined, about).toBe(edge.form === 'sweep' || edge.form === 'taper');
      if (!turns) continue;
      expect(turns.fullDepth, about).toBeCloseTo(f.fullDepthLength / 2, 6);
      if (edge.form === 'sweep')
        expect(turns.sweepEnd, about).toBeCloseTo(f.fullDepthLength / 2 + f.sweepLength, 6);
    }
  }
});
