import { describe, expect, test } from 'vitest';
import type { Profile } from '../../../models/curves/curves.ts';
import { crownRadius, drop, profile } from '../../../models/curves/profile.ts';
import { directionAt, distance, pointAt, type Segment } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { type Changes, design } from '../../support/change.ts';

const drawn = (changes: Changes, tipFloor = 0): Profile => profile(design(changes), tipFloor);

describe('the drop of an arc R − √(R² − x²)', () => {
  // derived by two independent programs, for 16 in
  test.each([
    [27.5, 0.93149],
    [16.5, 0.33509],
    [5.5, 0.03722],
  ])('at x = %d mm is %d mm', (x, fallen) => {
    expect(Math.abs(drop(406.4, x) - fallen)).toBeLessThan(1e-5);
  });
});

describe('the crown', () => {
  test('follows the fretboard, carried on to the slot’s middle, or is set by hand', () => {
    const cone: Changes = {
      'guitar.scale': 640,
      'saddle.setback': 5.16,
      'guitar.fretboard': 'conical',
      'guitar.fretboardRadius': '12 in',
      'guitar.fretboardRadiusAtFret': '16 in',
    };
    // 12 in to 16 in at fret 20 of a scale of 640, at 645.16: R0 + (R1 − R0)·y/y1 (derived)
    const place = 640 * (1 - 2 ** (-20 / 12));
    expect(crownRadius(design(cone))).toBeCloseTo(304.8 + (101.6 * 645.16) / place, 9);
    expect(crownRadius(design({ ...cone, 'top.crown': 'set', 'top.crownRadius': 500 }))).toBe(500);
    expect(crownRadius(design({}))).toBeCloseTo(406.4, 9);
  });

  test('stands at the thickness on the centre line and falls along its arc', () => {
    const top = drawn({ 'top.thickness': 9.5 });
    for (const x of [0, 5.5, 16.5, 27.5, -27.5]) {
      expect(topHeight(top, x)).toBeCloseTo(9.5 - drop(406.4, Math.abs(x)), 10);
    }
    expect(top.thickness).toBe(9.5);
  });
});

const SHAPES: readonly [string, Changes, number][] = [
  ['straight wings', {}, -0.39],
  ['straight level wings', { 'top.wingRise': 0 }, 0],
  ['steep straight wings', { 'top.wingRise': 4, 'top.blend': 12 }, -1],
  ['hollow wings', { 'top.wing': 'hollow', 'top.wingRise': 2.4, 'top.blend': 15 }, -0.39],
  ['a long low blend', { 'top.blend': 100, 'top.block': 70 }, 0],
  ['a large shoulder', { 'top.shoulder': 20 }, 0],
];

describe.each(SHAPES)('%s', (_name, changes, tipFloor) => {
  const d = design(changes);
  const top = drawn(changes, tipFloor);
  const { tip, wingRise, blend, shoulder, block } = d.top;
  const half = d.footprint.length / 2;

  test('run on without a corner, always toward +x', () => {
    top.chain.slice(1).forEach((s, i) => {
      const before = top.chain[i] as Segment;
      expect(distance(before.to, s.from)).toBeLessThan(1e-9);
      const [u, v] = [directionAt(before, 1), directionAt(s, 0)];
      expect(u[0] * v[1] - u[1] * v[0]).toBeCloseTo(0, 8);
      expect(s.to[0]).toBeGreaterThan(s.from[0]);
    });
  });

  test('are the same on both sides', () => {
    for (let x = 0; x <= half + 2; x += 0.7) expect(topHeight(top, -x)).toBeCloseTo(topHeight(top, x), 9);
  });

  test('leave the tip its wood over the glue face', () => {
    expect(topHeight(top, half)).toBeCloseTo(tipFloor + tip, 9);
    expect(topHeight(top, -half)).toBeCloseTo(tipFloor + tip, 9);
  });

  test('have the blend and the shoulder that they were given', () => {
    const radii = top.chain.filter((s) => s.kind === 'arc').map((s) => s.radius);
    expect(radii.filter((r) => Math.abs(r - blend) < 1e-9)).toHaveLength(2);
    expect(radii.filter((r) => Math.abs(r - shoulder) < 1e-9)).toHaveLength(2);
  });

  test('keep to the crown up to the shoulder, inside the block', () => {
    expect(top.crownEnd).toBeLessThan(block / 2);
    expect(topHeight(top, top.crownEnd)).toBeCloseTo(
      d.top.thickness - drop(top.crownRadius, top.crownEnd),
      9,
    );
    expect(topHeight(top, top.crownEnd + 0.5)).toBeLessThan(
      d.top.thickness - drop(top.crownRadius, top.crownEnd + 0.5),
    );
  });

  test('the run, carried back to the block’s end, stands wingRise over the tip', () => {
    const run = top.chain.find((s) => Math.abs(s.from[0] - top.runStart) < 1e-9) as Segment;
    const [x, z] = pointAt(run, 0.3);
    const rise = z - tipFloor - tip;
    const out = half - x;
    const whole = half - block / 2;
    // a straight: in proportion; an arc that is level at the tip: ρ − √(ρ² − out²), ρ = (l² + h²)/(2h) (derived)
    const radius = (whole ** 2 + wingRise ** 2) / (2 * wingRise);
    const expected =
      d.top.wing === 'straight' ? (wingRise * out) / whole : radius - Math.sqrt(radius ** 2 - out ** 2);
    expect(rise).toBeCloseTo(expected, 9);
  });

  test('reach beyond the tips, so that the cut clears the wood', () => {
    const last = top.chain[top.chain.length - 1] as Segment;
    expect(last.to[0]).toBeGreaterThan(half + 2);
  });
});

test('the blend passes through the crown’s end at the block’s end: there it would be without a shoulder', () => {
  const top = drawn({ 'top.shoulder': 1.5 });
  const arcs = top.chain.filter((s) => s.kind === 'arc' && Math.abs(s.radius - 25) < 1e-9);
  const right = arcs[arcs.length - 1];
  if (right?.kind !== 'arc') throw new Error('the blend is missing');
  const corner = [45, 9.5 - drop(406.4, 45)] as const;
  expect(distance(right.centre, corner)).toBeCloseTo(25, 9);
});
