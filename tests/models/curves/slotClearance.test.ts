import { describe, expect, test } from 'vitest';
import { slotClearance, slotPlans } from '../../../models/curves/slotClearance.ts';
import { curves, design, designText, problemsOf } from '../../support/change.ts';

test('nothing is wrong with the slot of all defaults', () => {
  expect(slotClearance(design({}), curves({}))).toEqual([]);
});

describe('the slot in plan', () => {
  test('at the crown and at the floor: upright walls stand over each other', () => {
    const [top, floor] = slotPlans(curves({ 'saddle.tilt': 0 }));
    floor?.forEach(([x, y], i) => {
      expect(x).toBeCloseTo(top?.[i]?.[0] ?? 0, 10);
      expect(y).toBeCloseTo(top?.[i]?.[1] ?? 0, 10);
    });
  });
  test('tilted walls lean forward on the way down by depth·sin(tilt) (derived)', () => {
    const tilted = { 'saddle.tilt': 10, 'saddle.angle': 0, 'saddle.depth': 5 };
    const [top, floor] = slotPlans(curves(tilted));
    const lean = 5 * Math.sin((10 * Math.PI) / 180);
    for (const [i, [, y]] of (floor ?? []).entries()) expect(y - (top?.[i]?.[1] ?? 0)).toBeCloseTo(lean, 9);
    expect(floor).toHaveLength(top?.length ?? 0);
  });
});

test('a front edge drawn in between the slot’s ends, which stand clear of it, is seen', () => {
  const drawnIn = {
    'footprint.backEdge': 'straight',
    'footprint.frontEdge': 'tail',
    'footprint.frontForm': 'sweep',
    'footprint.fullDepthLength': 10,
    'footprint.sweepLength': 30,
    'footprint.depthWing': 40,
    'footprint.depthCentre': 32,
    'footprint.cornerFront': 6,
    'footprint.tip': 'square',
    'saddle.angle': 0,
    'saddle.slotLength': 80,
    'saddle.slotWidth': 6,
    'pins.line': 'square',
    'top.edge': 'none',
  };
  // half the slot's width is 3, and 0.5 mm of wood must stand before it: 3.5, less than the table's least
  expect(
    problemsOf(designText({ ...drawnIn, 'saddle.slotWidth': 8, 'footprint.slotBehindFront': 4 })),
  ).toMatchObject([{ path: 'footprint.slotBehindFront', allowed: expect.stringMatching(/^at least 4\.5/) }]);
  expect(problemsOf(designText({ ...drawnIn, 'footprint.slotBehindFront': 4 }))).toEqual([]);
});

test('wood under the floor counts from the glue face, and a tilted floor has a lower corner', () => {
  const flat = { 'guitar.soundboard': 'flat', 'saddle.depth': 9, 'top.thickness': 9.5, 'saddle.tilt': 0 };
  expect(problemsOf(designText(flat))).toEqual([]);
  expect(problemsOf(designText({ ...flat, 'saddle.depth': 9.01 }))).toMatchObject([
    { path: 'saddle.depth', allowed: 'at most 9 mm in this thickness' },
  ]);
  // 9·cos 12° + 1.6·sin 12° = 9.136 (derived)
  expect(problemsOf(designText({ ...flat, 'saddle.tilt': 12 }))).toMatchObject([{ path: 'saddle.depth' }]);
});

test('both ends of a slot that leans two ways are looked at: the other hand is refused alike', () => {
  const leaning = {
    'saddle.angle': 9,
    'saddle.tilt': 12,
    'top.crown': 'set',
    'top.crownRadius': 250,
    'top.blend': 18,
    'footprint.slotBehindFront': 13,
    'footprint.depthCentre': 46,
    'saddle.slotLength': 66,
    'pins.behindSlot': 17,
  };
  for (let depth = 2; depth < 4; depth += 0.02) {
    const right = problemsOf(designText({ ...leaning, 'saddle.depth': depth }));
    const left = problemsOf(designText({ ...leaning, 'saddle.depth': depth, 'guitar.hand': 'left' }));
    expect(left).toEqual(right);
  }
});
