import { describe, expect, test } from 'vitest';
import { chainLength, enclosedArea } from '../../../models/curves/chain.ts';
import type { Slot } from '../../../models/curves/curves.ts';
import { handSign, slotFloor, slotToPart } from '../../../models/curves/slot.ts';
import { type Changes, curves, design } from '../../support/change.ts';

const drawn = (changes: Changes): Slot => curves(changes).slot;
const DEG = Math.PI / 180;

describe('in plan (derived)', () => {
  test('round ends make a stadium: (L − w)·w + πw²/4', () => {
    const slot = drawn({ 'saddle.slotLength': 74, 'saddle.slotWidth': 3.2 });
    expect(enclosedArea(slot.plan)).toBeCloseTo((74 - 3.2) * 3.2 + (Math.PI * 3.2 * 3.2) / 4, 10);
    expect(chainLength(slot.plan)).toBeCloseTo(2 * (74 - 3.2) + Math.PI * 3.2, 10);
    expect(slot.halfLength).toBe(37);
  });

  test('open ends run out where the wings’ run begins', () => {
    const changes: Changes = { 'saddle.ends': 'open', 'saddle.depth': 4 };
    const slot = drawn(changes);
    expect(slot.halfLength * Math.cos(slot.angle)).toBeCloseTo(curves(changes).profile.runStart, 9);
    expect(enclosedArea(slot.plan)).toBeCloseTo(2 * slot.halfLength * 3.2, 9);
  });
});

describe('in the part', () => {
  const slot = drawn({ 'saddle.angle': 3, 'saddle.tilt': 8, 'saddle.depth': 5 });

  test('its frame stands on the crown at the origin', () => {
    expect(slotToPart(slot, 9.5, 0, 0, 0)).toEqual([0, 0, 9.5]);
  });

  test('a positive angle carries the bass end, at −X, away from the nut, toward −Y', () => {
    const [x, y] = slotToPart(slot, 9.5, -30, 0, 0);
    expect(x).toBeCloseTo(-30 * Math.cos(3 * DEG), 10);
    expect(y).toBeCloseTo(-30 * Math.sin(3 * DEG), 10);
  });

  test('tilted, its top leans back toward the pins, and its floor forward', () => {
    const [, high] = slotToPart(slot, 9.5, 0, 0, 3);
    const [, low, z] = slotToPart(slot, 9.5, 0, 0, -5);
    expect(high).toBeCloseTo(-3 * Math.sin(8 * DEG) * Math.cos(3 * DEG), 10);
    expect(low).toBeCloseTo(5 * Math.sin(8 * DEG) * Math.cos(3 * DEG), 10);
    expect(z).toBeCloseTo(9.5 - 5 * Math.cos(8 * DEG), 10);
  });

  test('distances are kept', () => {
    const a = slotToPart(slot, 9.5, 10, -1, -2);
    const b = slotToPart(slot, 9.5, -7, 1.2, -4.5);
    expect(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])).toBeCloseTo(Math.hypot(17, 2.2, 2.5), 10);
  });
});

describe('the floor', () => {
  test('flat: the same depth below the crown’s top everywhere', () => {
    const slot = drawn({ 'saddle.floor': 'flat', 'saddle.depth': 5.5 });
    for (const u of [0, 20, -37]) expect(slotFloor(slot, u)).toBe(-5.5);
  });
  test('parallel: an arc of the crown’s radius (derived)', () => {
    const slot = drawn({ 'saddle.floor': 'parallel', 'saddle.depth': 5.5 });
    expect(slot.floorRadius).toBeCloseTo(406.4, 9);
    for (const u of [0, 20, -37]) {
      expect(slotFloor(slot, u)).toBeCloseTo(-5.5 - (406.4 - Math.sqrt(406.4 ** 2 - u * u)), 9);
    }
  });
});

test('a left-handed slot is the mirror image: it leans the other way', () => {
  const right = drawn({ 'saddle.angle': 3, 'saddle.tilt': 5 });
  const left = drawn({ 'saddle.angle': 3, 'saddle.tilt': 5, 'guitar.hand': 'left' });
  expect([handSign(design({})), handSign(design({ 'guitar.hand': 'left' }))]).toEqual([1, -1]);
  for (const [u, v, w] of [
    [30, 1, -2],
    [-30, -1, 0],
  ] as const) {
    const [x, y, z] = slotToPart(right, 9.5, u, v, w);
    const mirror = slotToPart(left, 9.5, -u, v, w);
    expect(mirror[0]).toBeCloseTo(-x, 10);
    expect(mirror[1]).toBeCloseTo(y, 10);
    expect(mirror[2]).toBeCloseTo(z, 10);
  }
});
