import { describe, expect, test } from 'vitest';
import { pinClearance, woodAtPins } from '../../../models/curves/pinClearance.ts';
import { drop } from '../../../models/curves/profile.ts';
import { curves, design, designText, problemsOf } from '../../support/change.ts';

test('nothing is wrong with the pins of all defaults', () => {
  expect(pinClearance(design({}), curves({}))).toEqual([]);
});

test('the least wood at a pin is at the outer ones: thickness less the crown’s drop (derived)', () => {
  const flat = { 'guitar.soundboard': 'flat', 'pins.spread': 57, 'top.thickness': 9.5 };
  expect(woodAtPins(curves(flat))).toBeCloseTo(9.5 - drop(406.4, 28.5), 10);
  // with a dish of 25 ft the glue face falls away under them: 28.5² + 13² over 2·7620
  expect(woodAtPins(curves({ ...flat, 'guitar.soundboard': 'sphere' }))).toBeGreaterThan(
    9.5 - drop(406.4, 28.5),
  );
});

describe('pins and slot', () => {
  test('a hole that lies wholly inside a wide slot is seen, though it touches none of its walls', () => {
    const inside = {
      'strings.count': 4,
      'pins.spread': 72,
      'pins.line': 'square',
      'pins.behindSlot': 4,
      'pins.drill': 2.5,
      'pins.taper': 0,
      'pins.bevel': 'none',
      'saddle.angle': 9,
      'saddle.slotWidth': 8,
      'footprint.depthCentre': 50,
      'footprint.slotBehindFront': 17,
    };
    expect(problemsOf(designText(inside)).map((p) => p.path)).toContain('pins.behindSlot');
  });

  test('the named limit leaves half a millimetre of wood between them', () => {
    const close = { 'pins.behindSlot': 4, 'saddle.angle': 0, 'pins.bevel': 'none', 'saddle.slotWidth': 3 };
    // 1.5 of slot, 0.5 of wood, 2.8 of hole (derived)
    expect(problemsOf(designText(close))).toMatchObject([
      { path: 'pins.behindSlot', allowed: expect.stringMatching(/^at least 4\.8\d? mm /) },
    ]);
  });
});

test('the back edge keeps the edge’s own size and half a millimetre from every hole', () => {
  const straight = {
    'footprint.backEdge': 'straight',
    'footprint.depthCentre': 30,
    'footprint.slotBehindFront': 11,
    'pins.bevel': 'none',
  };
  // 30 − 11 = 19 to the back edge; less 2.8 of hole, 1 of round-over, 0.5 of wood: 14.7 (derived)
  expect(problemsOf(designText({ ...straight, 'pins.behindSlot': 14.7 }))).toEqual([]);
  expect(problemsOf(designText({ ...straight, 'pins.behindSlot': 14.75 }))).toMatchObject([
    { path: 'pins.behindSlot', allowed: expect.stringMatching(/^at most 14\.(69|7) mm /) },
  ]);
});
