import type { Plan } from '../curves/rim/plan.ts';
import type { Chord } from './chords.ts';
import type { Body } from './cut.ts';
import { between, gauss, panels } from './gauss.ts';
import type { Parts } from './parts.ts';
import { SliceSum } from './sliceSum.ts';
import { topOver, woodUnder } from './surface.ts';

/** A section square to X: its area, centroid, and what it is worth in bending and in torsion. */
export interface Slice {
  readonly x: number;
  readonly areaMm2: number;
  /** Centroid (y, z). */
  readonly centroidMm: readonly [number, number];
  /** ∫z² dA about the horizontal axis through the centroid. */
  readonly secondMm4: number;
  /** Torsion constant: an estimate. */
  readonly torsionMm4: number;
}

/** Least length that is looked at to tell whether the edge reaches it, mm. */
const LEAST = 1;
/** Room beyond the edge's reach, mm: for rounding. */
const SLACK = 0.01;
/** A top that slopes less, dz/dx, draws a round-over inward by less than a hundredth of what it takes. */
const GENTLE = 0.15;

/** The section at x over the outline's chords there, by stretches of y in which its heights are smooth. */
export function slice(parts: Parts, faces: Body, chords: readonly Chord[], x: number): Slice {
  const { underside, cuts } = parts;
  const high = faces.top(x);
  const middle = chords[0] ? (chords[0].back.y + chords[0].front.y) / 2 : 0;
  // the slot, the pins' holes and what else leaves less than half of the wood part the section when it twists
  const sum = new SliceSum((high - faces.under(x, middle)) / 2);
  const near = cuts.filter(({ box }) => x > box.x0 && x < box.x1);
  const turns = near.flatMap((cut) => cut.turnsAt(x, faces));
  // a dome's underside is the only face that bends along a chord
  const plain = gauss(underside.shape === 'sphere' ? 3 : 1);

  for (const chord of chords) {
    const { stops, clearFrom, clearTo } = stretches(parts, chord, turns, x);
    let [isCut, rounded] = [false, false];
    const add = (y: number, dy: number) => {
      const z = rounded ? topOver(parts, x, y) : high;
      if (isCut) sum.add(y, woodUnder(parts, cuts.length, x, y, z), dy);
      else sum.add(y, [[faces.under(x, y), z]], dy);
    };
    for (let i = 1; i < stops.length; i++) {
      const [from, to] = [stops[i - 1] as number, stops[i] as number];
      const halfway = (from + to) / 2;
      isCut = near.some((cut) => cut.removed(x, halfway));
      rounded = halfway < clearFrom || halfway > clearTo;
      if (rounded && i === 1) fromEdge(from, to, add);
      else if (rounded && i === stops.length - 1) fromEdge(to, from, add);
      // an even number: a line at x that touches a hole's side touches it in the middle
      else between(from, to, rounded || isCut ? gauss(4) : plain, add);
    }
  }
  const [y, z] = sum.area > 0 ? [sum.y / sum.area, sum.z / sum.area] : [0, 0];
  return {
    x,
    areaMm2: sum.area,
    centroidMm: [y, z],
    secondMm4: sum.zz - sum.z * z,
    torsionMm4: sum.torsion(),
  };
}

/** A chord from stop to stop, and between which of them the edge reaches nothing. */
interface Stretches {
  readonly stops: readonly number[];
  readonly clearFrom: number;
  readonly clearTo: number;
}

function stretches(parts: Parts, { back, front }: Chord, turns: readonly number[], x: number): Stretches {
  const { edge, plan, top } = parts;
  if (!edge) return { stops: panels(back.y, front.y, turns), clearFrom: back.y, clearTo: front.y };
  const middle = (back.y + front.y) / 2;
  // how wide a wall's band of this depth looks along Y, where the chord has room for it
  const bands = (depth: number) => [
    Math.min(middle, back.y + depth * Math.hypot(1, back.slope)),
    Math.max(middle, front.y - depth * Math.hypot(1, front.slope)),
  ];
  // a ball reaches beyond its radius where the top slopes: by so little on a crown that it isn't looked at
  const radius = edge.section === 'arc' ? edge.reach / 2 : edge.reach;
  const slope = edge.section === 'arc' ? Math.abs(top.slope(x, 0)) : 0;
  const reach = radius * (1 + (slope < GENTLE ? 0 : slope / Math.hypot(1, slope)));
  const [from, to] = bands(reach + SLACK) as [number, number];
  const touched = reach > radius ? bands(radius) : [];
  const isClear = from < to && beyond(plan, reach, x, from, to);
  const joints = isClear
    ? []
    : plan.pieces.filter((s) => Math.abs(s.from[0] - x) < 2 * edge.reach).map((s) => s.from[1]);
  return {
    stops: panels(back.y, front.y, [...turns, ...touched, from, to, ...joints]),
    clearFrom: isClear ? from : front.y,
    clearTo: isClear ? to : front.y,
  };
}

/** Whether the line at x from one y to another keeps farther from the outline than the edge reaches. */
function beyond(plan: Plan, reach: number, x: number, from: number, to: number): boolean {
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  if (!plan.nearest(x, middle, reach + half)) return true;
  if (half < LEAST) return false;
  return beyond(plan, reach, x, from, middle) && beyond(plan, reach, x, middle, to);
}

/** As `between` from the outline inward, where a round-over begins like a square root. */
function fromEdge(outline: number, inner: number, visit: (y: number, weight: number) => void): void {
  const span = inner - outline;
  between(0, 1, gauss(4), (q, dq) => visit(outline + span * q * q, 2 * q * Math.abs(span) * dq));
}
