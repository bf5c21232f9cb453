import type { Curves, Holes } from '../curves/curves.ts';
import type { PlanBox } from '../curves/rim/plan.ts';
import { undersideHeight } from '../curves/underside.ts';
import { chordBreaks, chordsOf } from './chords.ts';
import type { Cut } from './cut.ts';
import { between, betweenRounded, gauss, panels } from './gauss.ts';
import { within } from './interval.ts';
import { Moments } from './moments.ts';
import { once } from './once.ts';
import { type Blank, blankOf, facesOf, type Parts, partsOf } from './parts.ts';
import { columns, woodUnder } from './surface.ts';

/**
 * Volume, first and second moments of the wood: the body's, less what the edge and then each cut takes. Every term is
 * integrated in coordinates in which it is smooth, so that few places give a millionth of the volume.
 */
export function integrate(curves: Curves, holes: Holes): Moments {
  return whole[holes](curves);
}

const whole: Readonly<Record<Holes, (curves: Curves) => Moments>> = {
  drilled: once((curves: Curves) => cutFrom(curves, 'drilled')),
  reamed: once((curves: Curves) => cutFrom(curves, 'reamed')),
};

function cutFrom(curves: Curves, holes: Holes): Moments {
  const parts = partsOf(curves, holes);
  const sum = ofSlotted(curves).copy();
  for (let made = 1; made < parts.cuts.length; made++) takeCut(sum, parts, made);
  return sum;
}

/** The body with its edge and its slot, the first of the cuts: the same for all holes. */
const ofSlotted = once((curves: Curves) => {
  const blank = blankOf(curves);
  const sum = new Moments();
  addBody(sum, blank);
  if (blank.edge) takeEdge(sum, blank);
  takeCut(sum, partsOf(curves, 'drilled'), 0);
  return sum;
});

/** The body between underside and uncut top, chord by chord. */
function addBody(sum: Moments, { plan, top, underside }: Blank): void {
  const chords = chordsOf(plan.pieces);
  const { x0, x1 } = plan.box;
  const stops = panels(x0, x1, [...chordBreaks(plan.pieces), ...top.joints(0)]);
  // a dome's underside is the only face that bends along a chord
  const across = gauss(underside.shape === 'sphere' ? 6 : 2);
  stops.slice(1).forEach((to, i) => {
    betweenRounded(stops[i] as number, to, gauss(12), (x, dx) => {
      const z = top.height(x, 0);
      for (const { back, front } of chords(x)) {
        between(back.y, front.y, across, (y, dy) =>
          sum.add(x, y, undersideHeight(underside, x, y), z, dx * dy),
        );
      }
    });
  });
}

/** What the edge takes: between its surface and the uncut top, by the surface's own coordinates. */
function takeEdge(sum: Moments, { edge, top }: Blank): void {
  if (!edge) return;
  const [alongRule, acrossRule] = [gauss(8), gauss(6)];
  // steps for the plan area by central differences, mm along the edge and share across it
  const [ds, dt] = [1e-5, 1e-5];
  edge.breaks.slice(1).forEach((to, i) => {
    const from = edge.breaks[i] as number;
    if (to - from < 1e-9) return;
    between(from, to, alongRule, (s, alongWeight) => {
      const [here, before, after] = [edge.across(s), edge.across(s - ds), edge.across(s + ds)];
      between(0, 1, acrossRule, (share, acrossWeight) => {
        const [x, y, z] = here(share);
        const [a, b] = [before(share), after(share)];
        const [c, d] = [here(share - dt), here(share + dt)];
        const area = ((b[0] - a[0]) * (c[1] - d[1]) - (b[1] - a[1]) * (c[0] - d[0])) / (4 * ds * dt);
        sum.add(x, y, z, top.height(x, 0), -area * alongWeight * acrossWeight);
      });
    });
  });
}

/** What a cut takes of the wood that those before it left. */
function takeCut(sum: Moments, parts: Parts, made: number): void {
  const cut = parts.cuts[made] as Cut;
  const before = parts.cuts.slice(0, made).filter(({ box }) => meet(box, cut.box));
  const isInside = parts.inside[made];
  cut.places(facesOf(parts), (x, y, area) => {
    const removed = cut.removed(x, y);
    if (!removed) return;
    const wood = isInside
      ? woodUnder(parts, before, x, y, parts.top.height(x, 0))
      : columns(parts, before, x, y);
    for (const [from, to] of within(wood, removed[0], removed[1])) sum.add(x, y, from, to, -area);
  });
}

const meet = (a: PlanBox, b: PlanBox) => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;
