import { beforeAll, describe, expect, test } from 'vitest';
import type { Curves } from '../../../models/curves/curves.ts';
import { curvesBox } from '../../../models/curves/curvesBox.ts';
import { createDrafter, type Drafter } from '../../../models/draft/draftMesh.ts';
import { type Changes, curves, designText, problemsOf } from '../../support/change.ts';
import { closedMesh } from '../../support/closedMesh.ts';

/** For a machine that does much else at once, ms. */
const SLOW = 120_000;

let drafter: Drafter;
beforeAll(async () => {
  drafter = await createDrafter();
});

/** Coarse: for what doesn't hang on how fine the mesh is. */
const COARSE = 0.1;

/** Every combination of one value from each list. */
function combinations(lists: Readonly<Record<string, readonly unknown[]>>): Changes[] {
  return Object.entries(lists).reduce<Changes[]>(
    (all, [path, values]) => all.flatMap((one) => values.map((value) => ({ ...one, [path]: value }))),
    [{}],
  );
}

/** Drafts a design and counts the mesh itself: closed, one piece, a hole a pin. */
function expectWhole(changes: Changes, holes: 'drilled' | 'reamed'): void {
  const said = JSON.stringify(changes);
  expect(problemsOf(designText(changes)), said).toEqual([]);
  const drawn = curves(changes);
  const { mesh, volumeMm3, throughHoles } = drafter.draft(drawn, holes, COARSE);
  const { openSides, pieces, genus, volume } = closedMesh(mesh);
  expect({ openSides, pieces, genus, throughHoles }, said).toEqual({
    openSides: 0,
    pieces: 1,
    genus: drawn.pins.length,
    throughHoles: drawn.pins.length,
  });
  expect(volume / volumeMm3, said).toBeCloseTo(1, 5);
}

describe('every option gives one closed piece with a hole a pin', () => {
  const roomy: Changes = {
    'footprint.length': 190,
    'footprint.slotBehindFront': 13,
    'footprint.sweepLength': 26,
  };

  test('every way of the back and the front edge with every tip', { timeout: SLOW }, () => {
    const backs = [['straight', 'sweep', 0], ...ways('tail', 5), ...ways('soundhole', -5)] as const;
    const fronts = [['straight', 'sweep', 0], ...ways('soundhole', 3), ...ways('tail', -3)] as const;
    let n = 0;
    for (const [backEdge, backForm, back] of backs) {
      for (const [frontEdge, frontForm, front] of fronts) {
        for (const tip of ['square', 'bowed', 'round']) {
          const changes = {
            ...roomy,
            'footprint.depthCentre': 40,
            'footprint.depthWing': 40 - back - front,
            'footprint.backEdge': backEdge,
            'footprint.backForm': backForm,
            'footprint.frontEdge': frontEdge,
            'footprint.frontForm': frontForm,
            'footprint.frontBelly': 3,
            'footprint.tip': tip,
            'top.edge': (['none', 'round', 'chamfer'] as const)[n % 3],
            'underside.shape': (['sphere', 'cylinder', 'flat', 'sphere'] as const)[n % 4],
          };
          expectWhole(changes, n++ % 2 === 0 ? 'reamed' : 'drilled');
        }
      }
    }
    expect(n).toBe(7 * 7 * 3);
  });

  test('every edge, slot, channel, hand and underside together', { timeout: SLOW }, () => {
    const all = combinations({
      'top.edge': ['none', 'round', 'chamfer'],
      'saddle.floor': ['flat', 'parallel'],
      'saddle.ends': ['round', 'open'],
      'saddle.tilt': [0, 8],
      'pins.channel': ['none', 'ramp'],
      'guitar.hand': ['right', 'left'],
      'underside.shape': ['flat', 'cylinder', 'sphere'],
    });
    const base = {
      'top.thickness': 12,
      'saddle.depth': 5,
      'top.crown': 'set',
      'top.crownRadius': 900,
      'top.wingRise': 0.2,
    };
    all.forEach((changes, i) => {
      expectWhole({ ...base, ...changes }, i % 2 === 0 ? 'reamed' : 'drilled');
    });
    expect(all).toHaveLength(288);
  });

  test('every number of strings', { timeout: SLOW }, () => {
    for (let count = 4; count <= 12; count++) {
      expectWhole(
        { 'strings.count': count, 'pins.spread': 78, 'saddle.slotLength': 80, 'pins.bevel': 'none' },
        'reamed',
      );
    }
  });
});

function ways(edge: string, rise: number) {
  return (['sweep', 'bow', 'taper'] as const).map((form) => [edge, form, rise] as const);
}

test('reaming takes wood', () => {
  const drawn = curves();
  const [drilled, reamed] = [drafter.draft(drawn, 'drilled'), drafter.draft(drawn, 'reamed')];
  expect(reamed.volumeMm3).toBeLessThan(drilled.volumeMm3);
});

test('a left-handed design is the mirror image: as much wood, the slot leaning the other way', () => {
  const [right, left] = ['right', 'left'].map((hand) =>
    drafter.draft(curves({ 'guitar.hand': hand, 'saddle.angle': 6 }), 'reamed', 0.005),
  );
  expect((left?.volumeMm3 ?? 0) / (right?.volumeMm3 ?? 1)).toBeCloseTo(1, 5);
});

test('the box is the one that the curves put round the part', () => {
  for (const changes of [
    {},
    { 'footprint.tip': 'round' },
    { 'footprint.tip': 'square', 'top.edge': 'chamfer' },
    { 'footprint.backForm': 'bow', 'top.edge': 'none' },
  ]) {
    const drawn = curves(changes);
    const box = curvesBox(drawn);
    drafter.draft(drawn, 'reamed').boxMm.forEach((side, i) => {
      expect(Math.abs(side - (box[i] as number)), JSON.stringify(changes)).toBeLessThan(2e-3);
    });
  }
});

test('a drag of 200 drafts holds no more memory than the first few', { timeout: SLOW }, () => {
  const drag = [1, 1.5, 2, 2.5, 3].map((angle) => curves({ 'saddle.angle': angle, 'pins.channel': 'ramp' }));
  const step = (i: number) => drafter.draft(drag[i % drag.length] as Curves, 'reamed');
  for (let i = 0; i < 10; i++) step(i);
  const before = drafter.heapBytes();
  // a body that is not let go holds nearly a megabyte
  for (let i = 0; i < 200; i++) step(i);
  expect(drafter.heapBytes()).toBe(before);
});

test('a draft that fails says so, and leaves nothing behind', { timeout: SLOW }, () => {
  const drawn = curves();
  // no checked design is like this: the body is made, and the pins can't be
  const broken: Curves = {
    ...drawn,
    pins: drawn.pins.map((pin) => ({ ...pin, at: [Number.NaN, pin.at[1]] as const })),
  };
  expect(() => drafter.draft(broken, 'reamed')).toThrow(/finite/i);
  const before = drafter.heapBytes();
  for (let i = 0; i < 200; i++) expect(() => drafter.draft(broken, 'reamed')).toThrow();
  expect(drafter.heapBytes()).toBe(before);
  expect(drafter.draft(drawn, 'reamed').throughHoles).toBe(6);
});

test('once disposed of, a drafter makes no more', async () => {
  const other = await createDrafter();
  other.dispose();
  expect(() => other.draft(curves(), 'reamed')).toThrow('disposed');
});
