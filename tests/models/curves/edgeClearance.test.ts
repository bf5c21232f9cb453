import { describe, expect, test } from 'vitest';
import type { Curves } from '../../../models/curves/curves.ts';
import { edgeClearance, edgeSize } from '../../../models/curves/edgeClearance.ts';
import { arc } from '../../../models/curves/segment.ts';
import { curves, design } from '../../support/change.ts';

test('the size counts only when there is an edge', () => {
  expect(edgeSize(design({ 'top.edge': 'round', 'top.edgeSize': 1.2 }))).toBe(1.2);
  expect(edgeSize(design({ 'top.edge': 'none', 'top.edgeSize': 1.2 }))).toBe(0);
});

describe('the ball of a round-over turns inside every arc that swells outward', () => {
  const d = design({ 'top.edgeSize': 1.6, 'top.tip': 3 });
  const drawn = curves({ 'top.edgeSize': 1.6, 'top.tip': 3 });
  /** The drawn outline with one more arc somewhere. */
  const withArc = (radius: number, turn: 1 | -1): Curves => ({
    ...drawn,
    outline: [...drawn.outline, arc([radius, 0], [0, turn * radius], [0, 0], turn)],
  });

  test.each([2, 2.01, 5])('%d mm is wide enough for an edge of 1.6', (radius) => {
    expect(edgeClearance(d, withArc(radius, 1))).toEqual([]);
  });
  test('1.9 mm is not, and the edge that would be is named: 1.9/1.25 (derived)', () => {
    expect(edgeClearance(d, withArc(1.9, 1))).toMatchObject([
      { path: 'top.edgeSize', allowed: expect.stringMatching(/^at most 1\.52 mm .* 1\.9 mm$/) },
    ]);
  });
  test('a hollow arc may be as tight as it likes', () => {
    expect(edgeClearance(d, withArc(0.5, -1))).toEqual([]);
  });
  test('without an edge any arc may', () => {
    expect(edgeClearance(design({ 'top.edge': 'none' }), withArc(0.5, 1))).toEqual([]);
  });
});

test('a dome of small radius comes through a thin level wing between block and tip: refused', () => {
  // R 2000: the glue face lies 0.4 mm higher at x = 60 than at the tip (derived); 1 mm of tip leaves 0.6 there
  const thin = { 'guitar.soundboardRadius': 2000, 'top.edge': 'none', 'top.wingRise': 0, 'top.blend': 12 };
  const drawn = curves({ ...thin, 'top.tip': 2 });
  expect(edgeClearance(design({ ...thin, 'top.tip': 2 }), drawn)).toEqual([]);
  const floor = -(2000 - Math.sqrt(2000 ** 2 - 76.5 ** 2));
  const sunk = {
    ...drawn,
    profile: { ...drawn.profile, chain: drawn.profile.chain.map((s) => lowered(s, 1)) },
  };
  expect(floor).toBeLessThan(-1.4);
  expect(edgeClearance(design({ ...thin, 'top.tip': 1 }), sunk)).toMatchObject([{ path: 'top.tip' }]);
});

function lowered<S extends Curves['outline'][number]>(s: S, by: number): S {
  const down = (p: readonly [number, number]) => [p[0], p[1] - by] as const;
  const ends = { ...s, from: down(s.from), to: down(s.to) };
  return s.kind === 'arc' ? { ...ends, centre: down(s.centre) } : ends;
}
