import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceTo } from '../../models/curves/chain.ts';
import { slotToPart } from '../../models/curves/slot.ts';
import { topHeight } from '../../models/curves/topHeight.ts';
import { jobOf } from '../../src/making/job.ts';
import { judgeMeasured } from '../../src/making/judgeMeasured.ts';
import { depthPasses, slotJig } from '../../src/making/slotJig.ts';
import { WORKSHOP } from '../../src/making/workshop.ts';
import type { Changes } from '../support/change.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { anyTools, type Bench, bench, benchOf } from './onBench.ts';

/*
 * The jig set up again by coordinates (derived): base and cutter as square and circle that slide along a fence between
 * stops, the bridge turned by a shim. Frame of the jig: u along the fence, v across it toward the front.
 */

/** Centres of the cutter when the base stands on the fence, k strips between, against the stop at +u. */
function cutterAtStop({ accepted, workshop }: Bench) {
  const jig = slotJig(jobOf(accepted, workshop));
  const half = workshop.baseWidth / 2;
  return Array.from({ length: jig.sidePasses }, (_, k): readonly [number, number] => [
    jig.stop - half,
    jig.fence - k * jig.sideStrip - half,
  ]);
}

const random = acceptedDesigns(60, 4711).accepted;
const tools = fc.sample(anyTools, { numRuns: random.length, seed: 815 });
const benches = [
  bench(),
  bench({ 'saddle.ends': 'open', 'saddle.depth': 4 }),
  bench({ 'saddle.tilt': 8 }, { cutter: 2 }),
  bench({ 'saddle.slotWidth': 4.8 }, { cutter: 1 }),
  ...random.map((accepted, i) =>
    benchOf(accepted, { ...tools[i]?.(accepted.design.saddle.slotWidth), slot: 'router' }),
  ),
];

test('between the stops the cutter just touches the slot’s ends, and its passes just touch the walls', () => {
  for (const one of benches) {
    const { slot } = one.accepted.curves;
    const jig = slotJig(jobOf(one.accepted, one.workshop));
    const { cutter } = one.workshop;
    const name = one.accepted.design.guitar.name;
    const centres = cutterAtStop(one);
    const [first, last] = [centres[0], centres[centres.length - 1]];
    expect((first?.[1] ?? 0) + cutter / 2, `${name}: front wall`).toBeCloseTo(jig.width / 2, 9);
    expect((last?.[1] ?? 0) - cutter / 2, `${name}: back wall`).toBeCloseTo(-jig.width / 2, 9);
    centres.slice(1).forEach(([, v], k) => {
      expect((centres[k]?.[1] ?? 0) - v, `${name}: nothing is left between passes`).toBeLessThanOrEqual(
        cutter + 1e-9,
      );
    });
    const reach = (first?.[0] ?? 0) + (slot.roundEnds ? cutter / 2 : 0);
    expect(reach, `${name}: the slot’s end`).toBeCloseTo(slot.halfLength, 9);
    expect(distanceTo(slot.plan, [reach, 0]), `${name}: on the drawn slot’s end`).toBeLessThan(1e-9);
    expect(one.value('slot.stops-apart')).toBeCloseTo(2 * one.value('slot.stop'), 9);
    expect(slot.width - jig.width, `${name}: hardly narrower than drawn`).toBeLessThan(0.05);
  }
});

test('a stop stands beyond the slot’s end by half the base less half the cutter', () => {
  const one = bench({ 'saddle.slotLength': 74, 'saddle.slotWidth': 3 }, { cutter: 3, baseWidth: 90 });
  expect(one.value('slot.stop-beyond')).toBeCloseTo(43.5, 9);
  expect(one.value('slot.stop')).toBeCloseTo(37 + 43.5, 9);
  expect(one.value('slot.fence')).toBeCloseTo(45, 9);
});

test('stops anywhere within their tolerances cut a slot within its own', () => {
  for (const one of benches.filter(({ accepted }) => accepted.curves.slot.roundEnds)) {
    const { cutter, baseWidth } = one.workshop;
    const name = one.accepted.design.guitar.name;
    const length = one.setting('slot.length');
    /** Over the round ends, from the way that the base has between stops so far apart. */
    const cut = (apart: number) => apart - baseWidth + cutter;
    const judged = (apart: number) => judgeMeasured(length, cut(apart)).within;
    for (const [id, stops] of [
      ['slot.stop', 2],
      ['slot.stop-beyond', 2],
      ['slot.stops-apart', 1],
    ] as const) {
      const { tolerance, value } = one.setting(id);
      if (!tolerance) throw new Error(`${id} has no tolerance`);
      const apart = id === 'slot.stop-beyond' ? one.value('slot.length') + 2 * value : stops * value;
      expect(judged(apart - stops * tolerance.minus), `${name}: ${id}, nearest`).toBe(true);
      expect(judged(apart + stops * tolerance.plus), `${name}: ${id}, farthest`).toBe(true);
      // no tighter than it need be
      expect(stops * (tolerance.minus + tolerance.plus), id).toBeCloseTo(0.3, 9);
    }
  }
});

describe('the shim, by turning the bridge', () => {
  const cases: [Changes, 'front' | 'back'][] = [];
  for (const hand of ['right', 'left'])
    for (const angle of [2.9, -1.5])
      for (const side of ['front', 'back'] as const)
        cases.push([{ 'guitar.hand': hand, 'saddle.angle': angle }, side]);

  test.each(cases)('%o along the %s edge', (changes, shimSide) => {
    const one = bench({ ...changes, 'footprint.backEdge': 'straight' }, { shimSide, jigLength: 320 });
    const { slot } = one.accepted.curves;
    const y = shimSide === 'front' ? 11 : -25;
    // the edge's points in the jig, the slot's line turned onto the fence
    const turned = (x: number) => [
      x * Math.cos(slot.angle) + y * Math.sin(slot.angle),
      -x * Math.sin(slot.angle) + y * Math.cos(slot.angle),
    ];
    const [[u0 = 0, v0 = 0], [u1 = 0, v1 = 0]] = [turned(-50), turned(50)];
    const edgeAt = (u: number) => v0 + ((v1 - v0) * (u - u0)) / (u1 - u0);
    // a rail just clear of the edge over the jig's length
    const ends = [edgeAt(-160), edgeAt(160)];
    const rail = shimSide === 'front' ? Math.max(...ends) : Math.min(...ends);
    const gaps = ends.map((v) => Math.abs(rail - v));
    expect(Math.max(...gaps), 'its height').toBeCloseTo(one.value('slot.shim-height'), 9);
    // the gap opens over the jig's length by the angle between fence and edge
    const opening = Math.atan(Math.abs((gaps[1] ?? 0) - (gaps[0] ?? 0)) / 320);
    expect((opening * 180) / Math.PI, 'its angle').toBeCloseTo(one.value('slot.shim-angle'), 9);
    const thickAtPlusU = (gaps[1] ?? 0) > (gaps[0] ?? 0);
    const trebleAtPlusU = changes['guitar.hand'] === 'right';
    const jig = slotJig(jobOf(one.accepted, one.workshop));
    expect(jig.thickEnd, 'its thick end').toBe(thickAtPlusU === trebleAtPlusU ? 'treble' : 'bass');
    expect(one.step('slot')?.work[0]).toContain(`thick end to the ${jig.thickEnd}`);
  });

  test('its angle is the slot’s: 300 mm × tan 2.9° = 15.197', () => {
    expect(bench({ 'saddle.angle': 2.9 }).value('slot.shim-height')).toBeCloseTo(15.19734, 4);
  });

  test('the jig’s rail is no stop: stops stand at the slot’s two ends alone', () => {
    for (const shimSide of ['front', 'back'] as const) {
      const straight = { 'footprint.backEdge': 'straight' };
      const { work = [], settings = [] } = bench(straight, { shimSide }).step('slot') ?? {};
      expect(work[0]).toContain(`between the jig’s rail and the bridge’s ${shimSide} edge`);
      for (const line of work.filter((one) => /\bstops?\b/.test(one)))
        expect(line).toMatch(/a stop at either end|from stop to stop/);
      const stops = settings.filter(({ label }) => /\bstops?\b/i.test(label)).map(({ id }) => id);
      expect(stops).toEqual(['slot.stop', 'slot.stops-apart', 'slot.stop-beyond']);
    }
    const { jigLength, shimSide } = WORKSHOP;
    expect([jigLength, shimSide].map(({ help }) => help).join(' ')).not.toMatch(/\bstop/);
  });

  test('a slot square to the centre line needs none', () => {
    expect(bench({ 'saddle.angle': 0 }).step('slot')?.work[0]).toContain('no shim');
  });
});

describe('depths', () => {
  /** w at which the wall's direction through (u, v) reaches the level face z; heights go up evenly along it. */
  const wAtFace = ({ accepted: { curves } }: Bench, u: number, v: number, z: number) => {
    const at = (w: number) => slotToPart(curves.slot, curves.profile.thickness, u, v, w)[2];
    return (z - at(0)) / (at(1) - at(0));
  };
  const faceOf = ({ accepted, workshop }: Bench) => accepted.design.top.thickness + workshop.topAllowance;

  test('from the blank’s face along the walls to the floor, in the middle and from the cutter’s first touch', () => {
    for (const one of benches) {
      const { design, curves } = one.accepted;
      const total = wAtFace(one, 0, 0, faceOf(one)) + design.saddle.depth;
      expect(one.value('slot.depth'), design.guitar.name).toBeCloseTo(total, 9);
      if (curves.slot.tilt === 0) continue;
      // the cutter's flat foot, all round its rim, when the base stands on the fence
      const [[, v = 0] = []] = cutterAtStop(one);
      const rim = Array.from({ length: 360 }, (_, i) => (i * Math.PI) / 180).map((a) =>
        wAtFace(
          one,
          (one.workshop.cutter / 2) * Math.cos(a),
          v + (one.workshop.cutter / 2) * Math.sin(a),
          faceOf(one),
        ),
      );
      const touch = Math.max(...rim) + design.saddle.depth;
      expect(one.value('slot.touch'), `${design.guitar.name}: first touch`).toBeCloseTo(touch, 9);
    }
  });

  test('what is left under the crown, by walking up the wall from the floor', () => {
    for (const one of benches) {
      const { design, curves } = one.accepted;
      const { slot, profile } = curves;
      if (!slot.roundEnds) continue;
      const left = one.workshop.finishAllowance;
      const u = slot.halfLength;
      const floor = slot.floorRadius === undefined ? -slot.depth : -slot.depth - fall(slot.floorRadius, u);
      let [low, high] = [floor, floor + 30];
      for (let i = 0; i < 60; i++) {
        const w = (low + high) / 2;
        const [x, , z] = slotToPart(slot, profile.thickness, u, 0, w);
        if (z < topHeight(profile, x) + left) low = w;
        else high = w;
      }
      expect(Math.abs(one.value('crown.left-ends') - (low - floor)), design.guitar.name).toBeLessThan(0.02);
      expect(one.value('crown.left-middle')).toBeCloseTo(design.saddle.depth + left / Math.cos(slot.tilt), 9);
    }
  });

  const fall = (radius: number, u: number) => radius - Math.sqrt(radius * radius - u * u);

  test('a parallel floor goes deeper toward the ends, by the crown’s fall', () => {
    const one = bench({ 'saddle.floor': 'parallel', 'saddle.slotLength': 74 });
    const { crownRadius } = one.accepted.curves.profile;
    expect(one.value('slot.depth-ends') - one.value('slot.depth')).toBeCloseTo(fall(crownRadius, 37), 9);
    expect(bench().value('slot.depth-ends')).toBeNaN();
  });

  test.each([
    [5.8, 1.2, 5],
    [6, 1.2, 5],
    [4, 3, 4],
    [1, 1.2, 2],
    [0.3, 1.2, 1],
    [12, 1, 12],
  ])('%f mm in passes of at most %f: %i', (total, greatest, passes) => {
    const made = depthPasses(total, greatest);
    expect(made.passes).toBe(passes);
    expect(made.step * passes).toBeCloseTo(total, 12);
  });
});

test('a slot as wide as the cutter is one pass; one that is hardly wider too, and the saddle is fitted to it', () => {
  expect(bench({ 'saddle.slotWidth': 3 }, { cutter: 3 }).value('slot.side-strip')).toBeNaN();
  const nearly = bench({ 'saddle.slotWidth': 3.2 }, { cutter: 3.175 });
  expect(nearly.value('slot.side-strip')).toBeNaN();
  expect(nearly.value('slot.width')).toBe(3.175);
  const wider = bench({ 'saddle.slotWidth': 3.2 }, { cutter: 2.4 });
  expect(wider.value('slot.side-passes')).toBe(2);
  expect(wider.value('slot.side-strip')).toBeCloseTo(0.8, 9);
  expect(wider.value('slot.width')).toBe(3.2);
});
