import type { EdgeCut } from '../curves/rim/rim.ts';
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

/** The section at x over the outline's chords there, by stretches of y in which its heights are smooth. */
export function slice(parts: Parts, faces: Body, chords: readonly Chord[], x: number): Slice {
  const { underside, cuts, edge } = parts;
  const high = faces.top(x);
  const middle = chords[0] ? (chords[0].back.y + chords[0].front.y) / 2 : 0;
  // the slot, the pins' holes and what else leaves less than half of the wood part the section when it twists
  const sum = new SliceSum((high - faces.under(x, middle)) / 2);
  const near = cuts.filter(({ box }) => x > box.x0 && x < box.x1);
  const turns = near.flatMap((cut) => cut.turnsAt(x, faces));
  // a dome's underside is the only face that bends along a chord
  const plain = gauss(underside.shape === 'sphere' ? 3 : 1);

  for (const chord of chords) {
    const bands = edge ? edgeBands(parts, edge, chord, x) : [];
    const stops = panels(chord.back.y, chord.front.y, [...turns, ...bands]);
    for (let i = 1; i < stops.length; i++) {
      const [from, to] = [stops[i - 1] as number, stops[i] as number];
      const isCut = near.some((cut) => cut.removed(x, (from + to) / 2));
      const rounded = edge !== undefined && !beyond(parts, edge.reach, x, from, to);
      const add = (y: number, dy: number) => {
        const z = rounded ? topOver(parts, x, y) : high;
        sum.add(y, isCut ? woodUnder(parts, cuts.length, x, y, z) : [[faces.under(x, y), z]], dy);
      };
      if (rounded && i === 1) fromEdge(from, to, add);
      else if (rounded && i === stops.length - 1) fromEdge(to, from, add);
      else between(from, to, rounded || isCut ? gauss(5) : plain, add);
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

/** y within a chord where the edge's surface begins or bends, and the chord's middle where it is all edge. */
function edgeBands({ plan }: Parts, edge: EdgeCut, { back, front }: Chord, x: number): readonly number[] {
  const half = (front.y - back.y) / 2;
  // a ball reaches beyond its radius only where the top slopes
  const depths = edge.section === 'arc' ? [edge.reach / 2, edge.reach + SLACK] : [edge.reach + SLACK];
  const bands = depths.flatMap((depth) => [
    Math.min(half, depth * Math.hypot(1, back.slope)),
    -Math.min(half, depth * Math.hypot(1, front.slope)),
  ]);
  const joints = plan.pieces.filter((s) => Math.abs(s.from[0] - x) < edge.reach).map((s) => s.from[1]);
  return [...bands.map((band) => (band > 0 ? back.y : front.y) + band), ...joints];
}

/** Whether the line at x from one y to another keeps farther from the outline than the edge reaches. */
function beyond(parts: Parts, reach: number, x: number, from: number, to: number): boolean {
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  if (!parts.plan.nearest(x, middle, reach + half)) return true;
  if (half < LEAST) return false;
  return beyond(parts, reach, x, from, middle) && beyond(parts, reach, x, middle, to);
}

/** As `between` from the outline inward, where a round-over begins like a square root. */
function fromEdge(outline: number, inner: number, visit: (y: number, weight: number) => void): void {
  const span = inner - outline;
  between(0, 1, gauss(6), (q, dq) => visit(outline + span * q * q, 2 * q * Math.abs(span) * dq));
}
