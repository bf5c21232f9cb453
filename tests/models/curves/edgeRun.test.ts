import { describe, expect, test } from 'vitest';
import { type EdgeRun, edgeRun } from '../../../models/curves/edgeRun.ts';
import { type Chain, directionAt, distance, type Segment } from '../../../models/curves/segment.ts';
import { heightOn } from '../../../models/curves/topHeight.ts';

const back: EdgeRun = {
  form: 'straight',
  middle: -25,
  wing: -16,
  halfLength: 76,
  fullHalf: 26,
  sweep: 34,
  knee: 20,
};

function drawn(run: EdgeRun): Chain {
  const made = edgeRun(run);
  if ('code' in made) throw new Error(made.allowed);
  return made;
}

const FORMS = ['sweep', 'bow', 'taper'] as const;
describe.each(FORMS)('in a %s', (form) => {
  test.each([1, -1])('goes from the middle to the wing without a corner (way %d)', (way) => {
    const run = { ...back, form, wing: back.middle + way * 9 };
    const chain = drawn(run);
    expect(chain[0]?.from).toEqual([0, run.middle]);
    const last = chain[chain.length - 1] as Segment;
    expect(last.to[0]).toBeCloseTo(run.halfLength, 9);
    expect(last.to[1]).toBeCloseTo(run.wing, 9);
    chain.slice(1).forEach((s, i) => {
      const before = chain[i] as Segment;
      expect(distance(before.to, s.from)).toBeLessThan(1e-9);
      const [u, v] = [directionAt(before, 1), directionAt(s, 0)];
      expect(u[0] * v[1] - u[1] * v[0]).toBeCloseTo(0, 9);
    });
  });

  test('leaves the centre line level, so that both halves run on', () => {
    const [x, y] = directionAt(drawn({ ...back, form })[0] as Segment, 0);
    expect(x).toBeCloseTo(1, 12);
    expect(y).toBeCloseTo(0, 12);
  });
});

test('a double sweep is two equal arcs of (Δx² + Δy²)/(4Δy), meeting half way (derived)', () => {
  const [, first, second] = drawn({ ...back, form: 'sweep' });
  const radius = (34 * 34 + 9 * 9) / (4 * 9);
  expect(first).toMatchObject({ kind: 'arc', turn: 1, radius });
  expect(second).toMatchObject({ kind: 'arc', turn: -1 });
  expect(second?.kind === 'arc' && second.radius).toBeCloseTo(radius, 10);
  expect(first?.to).toEqual([26 + 17, -20.5]);
});

test('one bow is an arc through both ends, of (l² + h²)/(2h) (derived)', () => {
  const [only, ...more] = drawn({ ...back, form: 'bow' });
  expect(more).toEqual([]);
  expect(only).toMatchObject({
    kind: 'arc',
    radius: (76 * 76 + 81) / 18,
    centre: [0, -25 + (76 * 76 + 81) / 18],
  });
});

test('a taper is straight from its knee to the wing, and the knee has its radius', () => {
  const chain = drawn({ ...back, form: 'taper' });
  expect(chain.map((s) => s.kind)).toEqual(['line', 'arc', 'line']);
  expect(chain[1]).toMatchObject({ turn: 1 });
  expect(chain[1]?.kind === 'arc' && chain[1].radius).toBeCloseTo(20, 10);
  // the straight, carried back, meets the full depth where the run ends
  const straight = chain[2] as Segment;
  const slope = (straight.to[1] - straight.from[1]) / (straight.to[0] - straight.from[0]);
  expect(straight.from[1] + slope * (26 - straight.from[0])).toBeCloseTo(-25, 9);
});

test('a straight edge, or one with no belly, is one line', () => {
  expect(drawn(back)).toHaveLength(1);
  expect(drawn({ ...back, form: 'sweep', wing: back.middle })).toHaveLength(1);
});

test('a full-depth run too short to cut is none', () => {
  const chain = drawn({ ...back, form: 'sweep', fullHalf: 0.01 });
  expect(chain.map((s) => s.kind)).toEqual(['arc', 'arc', 'line']);
});

test('the edge lies between middle and wing everywhere', () => {
  for (const form of FORMS) {
    const chain = drawn({ ...back, form });
    for (let x = 0; x <= 76; x += 0.5) {
      expect(heightOn(chain, x)).toBeGreaterThanOrEqual(-25 - 1e-9);
      expect(heightOn(chain, x)).toBeLessThanOrEqual(-16 + 1e-9);
    }
  }
});
