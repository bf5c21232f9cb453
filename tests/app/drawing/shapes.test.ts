import { describe, expect, test } from 'vitest';
import { crossings, isInside } from '../../../models/curves/chain.ts';
import type { Holes } from '../../../models/curves/curves.ts';
import { distance, type Point, pointAt, type Segment } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { drawingShapes } from '../../../src/app/drawing/drawingShapes.ts';
import { litShapes } from '../../../src/app/drawing/litShapes.ts';
import { placesOf } from '../../../src/app/store/fieldAt.ts';
import type { AcceptedDesign } from '../../../src/design/acceptDesign.ts';
import { FIELDS, GROUPS } from '../../../src/design/fields.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { someDesigns } from './someDesigns.ts';

const shapesOf = ({ curves, text }: AcceptedDesign, holes: Holes = 'reamed') =>
  drawingShapes(curves, text, holes);
const bodies = (accepted: AcceptedDesign, view: string, holes: Holes = 'reamed') =>
  shapesOf(accepted, holes).filter((s) => s.view === view && s.name === 'body');
const sample = acceptedDesigns(40, 33).accepted.map((a, i) => [`random ${i}`, a] as const);
const all = [...Object.entries(someDesigns), ...sample];

test.each(all)('%s: every line hangs together, and every closed one closes', (_name, accepted) => {
  for (const { chain, closed, name, view } of shapesOf(accepted)) {
    chain.forEach((s, i) => {
      const next = chain[i + 1] ?? (closed ? chain[0] : undefined);
      if (next) expect(distance(s.to, next.from), `${view} ${name}, piece ${i}`).toBeLessThan(1e-6);
      for (const n of [...s.from, ...s.to]) expect(Number.isFinite(n), `${view} ${name}`).toBe(true);
      if (s.kind === 'arc') {
        const off =
          Math.abs(distance(s.from, s.centre) - s.radius) + Math.abs(distance(s.to, s.centre) - s.radius);
        expect(off, `${view} ${name}, piece ${i}: ends off its circle`).toBeLessThan(1e-6);
      }
    });
  }
});

describe('the section', () => {
  const both = all.flatMap(([name, accepted]) =>
    (['reamed', 'drilled'] as const).map((holes) => [name, holes, accepted] as const),
  );
  test.each(both)(
    '%s, %s: wood and air are where the columns at x = 0 have them',
    (_name, holes, accepted) => {
      const chains = bodies(accepted, 'section', holes).map((s) => s.chain);
      const surface = surfaceOf(accepted.curves, holes);
      const near = (a: readonly number[], b: readonly number[]) =>
        a.length === b.length && a.every((z, i) => Math.abs(z - (b[i] ?? Number.NaN)) < 0.01);
      const ys = chains.flat().flatMap((s) => [s.from[0], s.to[0]]);
      const [back, front] = [Math.min(...ys), Math.max(...ys)];
      // a hole of a second row that the plane only grazes is left to the exact section
      const grazed = accepted.curves.pins.filter(
        ({ at, reach }) => Math.abs(at[0]) > 1e-6 && Math.abs(at[0]) < reach,
      );
      const crossed = accepted.curves.channels.filter(
        ({ at: [x], direction: [dx], width, reach }) =>
          Math.abs(x) > 1e-6 && (Math.abs(x) < width || x * (x + dx * reach) < 0),
      );
      let compared = 0;
      for (let i = 0; i < 200; i++) {
        const y = back - 1 + (i * (front - back + 2)) / 199;
        if (grazed.some(({ at, reach }) => Math.abs(y - at[1]) < reach)) continue;
        if (crossed.some(({ at, reach }) => y > at[1] && y < at[1] + reach)) continue;
        const columns = (at: number) => surface.columns(0, at).flat();
        // beside an upright wall a hair decides whether it is wood or air
        if (!near(columns(y - 1e-4), columns(y + 1e-4))) continue;
        const drawn = chains.flatMap((chain) => heightsOver(chain, y)).sort((a, b) => a - b);
        expect(near(drawn, columns(y)), `at y = ${y}: drawn ${drawn}, wood ${columns(y)}`).toBe(true);
        compared++;
      }
      expect(compared).toBeGreaterThan(grazed.length + crossed.length > 0 ? 80 : 180);
    },
  );

  test('a pin beside the section is hinted at as it stands: parallel as drilled, wider at the top as reamed', () => {
    const widths = (holes: Holes) => {
      const ys = shapesOf(someDesigns.usual as AcceptedDesign, holes)
        .filter((s) => s.view === 'section' && s.name === 'mouths')
        .map((s) => (s.chain[0] as Segment).from[0]);
      return Math.abs((ys[0] ?? 0) - (ys[1] ?? 0));
    };
    // a drill of 3/16 in; a mouth of 5.6 reamed at 5° through some 9 mm is 4.8 at the glue face
    expect(widths('drilled')).toBeCloseTo(4.7625, 6);
    expect(widths('reamed')).toBeGreaterThan(4.77);
  });

  test('five pins: the middle hole and its channel part the wood in two', () => {
    expect(bodies(someDesigns['five pins, channels'] as AcceptedDesign, 'section')).toHaveLength(2);
    expect(bodies(someDesigns.usual as AcceptedDesign, 'section')).toHaveLength(1);
  });
});

describe('the elevation', () => {
  test.each(all)('%s: its top is the profile within the edge, its tips end the bridge', (_name, accepted) => {
    const { curves, design } = accepted;
    const [body] = bodies(accepted, 'elevation');
    const half = design.footprint.length / 2;
    const tops = (x: number): number => Math.max(...heightsOver(body?.chain ?? [], x));
    const edge = curves.edge.kind === 'none' ? 0 : curves.edge.size;
    for (const share of [-0.99, -0.6, -0.2, 0, 0.35, 0.8, 0.99]) {
      const x = share * (half - 2 * edge);
      expect(tops(x), `at x = ${x}`).toBeCloseTo(topHeight(curves.profile, x), 9);
    }
    const xs = (body?.chain ?? []).flatMap((s) => [s.from[0], s.to[0]]);
    expect(Math.max(...xs)).toBeCloseTo(half, 9);
    expect(Math.min(...xs)).toBeCloseTo(-half, 9);
  });

  test.each(all)('%s: the edge at the tip is as the wood has it', (_name, accepted) => {
    const { curves, design } = accepted;
    if (curves.edge.kind === 'none' || design.footprint.tip !== 'square') return;
    const [body] = bodies(accepted, 'elevation');
    const surface = surfaceOf(curves, 'reamed');
    const half = design.footprint.length / 2;
    const at = shapesOf(accepted).find((s) => s.name === 'tips' && (s.chain[0]?.from[0] ?? 0) > 0)?.chain[0];
    const y = pointAt(at as Segment, 0.5)[1];
    for (const in_ of [0.1, 0.4, 0.8]) {
      const x = half - in_ * curves.edge.size;
      const wood = surface.columns(x, y).at(-1)?.[1];
      const drawn = Math.max(...heightsOver(body?.chain ?? [], x));
      expect(Math.abs(drawn - (wood ?? Number.NaN)), `at x = ${x}`).toBeLessThan(0.02);
    }
  });
});

/** z of each place where a closed chain crosses the upright at x. */
function heightsOver(chain: readonly Segment[], x: number): readonly number[] {
  const swap = ([a, b]: Point): Point => [b, a];
  return chain
    .map((s): Segment => {
      const ends = { from: swap(s.from), to: swap(s.to) };
      return s.kind === 'line'
        ? { ...s, ...ends }
        : { ...s, ...ends, centre: swap(s.centre), turn: s.turn === 1 ? -1 : 1 };
    })
    .flatMap((s) => crossings(s, x));
}

describe('the plan', () => {
  test.each(all)('%s: slot, holes and channels lie within the outline', (_name, accepted) => {
    const { outline } = accepted.curves;
    for (const { name, chain, pose } of shapesOf(accepted).filter((s) => s.view === 'plan')) {
      if (name !== 'slot' && name !== 'drills' && name !== 'mouths' && name !== 'channels') continue;
      for (const s of chain) {
        const [u, v] = pointAt(s, 0.5);
        const { angle = 0, across = 1 } = pose ?? {};
        const p: Point = [
          u * Math.cos(angle) - across * v * Math.sin(angle),
          u * Math.sin(angle) + across * v * Math.cos(angle),
        ];
        expect(isInside(outline, p), `${name} at ${p}`).toBe(true);
      }
    }
  });

  test('holes are drawn as drilled, and as wide as mouth and bevel leave them', () => {
    const radii = (name: string, of: AcceptedDesign) =>
      shapesOf(of)
        .filter((s) => s.view === 'plan' && s.name === name)
        .map(({ chain }) => (chain[0]?.kind === 'arc' ? chain[0].radius : 0));
    const usual = someDesigns.usual as AcceptedDesign;
    expect(radii('drills', usual)).toHaveLength(6);
    for (const r of radii('drills', usual)) expect(2 * r).toBeCloseTo(4.7625, 9);
    for (const r of radii('mouths', usual)) expect(2 * r).toBeCloseTo(6.6, 9);
    expect(radii('drills', someDesigns['twelve pins'] as AcceptedDesign)).toHaveLength(12);
  });

  test('a left-handed slot leans the other way', () => {
    const slot = (name: string) =>
      shapesOf(someDesigns[name] as AcceptedDesign).find((s) => s.name === 'slot')?.pose?.angle ?? 0;
    expect(slot('usual')).toBeGreaterThan(0);
    expect(slot('left-handed, channels, chamfer')).toBeLessThan(0);
  });
});

describe('what lights up', () => {
  const paths = GROUPS.flatMap((group) => placesOf(group).map(({ path }) => path));
  const drawn = new Set(Object.values(someDesigns).flatMap((a) => shapesOf(a).map((s) => s.name)));

  test('every field of the part itself lights a line that is drawn', () => {
    const lines = paths.filter((path) => /^(footprint|underside|top|saddle|pins)\./.test(path));
    // how far the saddle shows and how it is filed is bone of the saddle, not wood of the bridge
    const saddles = /^saddle\.(showing|showingBy|rule|line|firmEnds|filed|crownMargin)$/;
    for (const path of lines.filter((p) => !saddles.test(p))) {
      expect(litShapes(path).length, path).toBeGreaterThan(0);
      for (const name of litShapes(path)) expect(drawn, `${path} lights ${name}`).toContain(name);
    }
  });

  test('nothing is lit without a selection or by a field that no line stands for', () => {
    expect(litShapes(undefined)).toEqual([]);
    expect(litShapes('timber.density')).toEqual([]);
    expect(Object.keys(FIELDS.timber)).toContain('density');
  });
});
