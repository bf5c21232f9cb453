import type { Chord } from './chords.ts';
import type { Body } from './cut.ts';
import type { Bite } from './edgeBites.ts';
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

/** The section at x over the outline's chords there, by stretches of y in which its heights are smooth. */
export function slice(parts: Parts, faces: Body, chords: readonly Chord[], bite: Bite): Slice {
  const { x } = bite;
  const { underside, cuts, inside } = parts;
  const high = faces.top(x);
  const middle = chords[0] ? (chords[0].back.y + chords[0].front.y) / 2 : 0;
  // the slot, the pins' holes and what else leaves less than half of the wood part the section when it twists
  const sum = new SliceSum((high - faces.under(x, middle)) / 2);
  const near = cuts.filter(({ box }) => x > box.x0 && x < box.x1);
  const isInside = near.every((cut) => inside[cuts.indexOf(cut)]);
  const turns = near.flatMap((cut) => cut.turnsAt(x, faces));
  // a dome's underside is the only face that bends along a chord
  const plain = gauss(underside.shape === 'sphere' ? 3 : 1);

  const addPlain = (y: number, dy: number) => sum.addWhole(y, faces.under(x, y), high, dy);
  const addCut = (y: number, dy: number) => {
    const z = isInside ? high : topOver(parts, x, y);
    sum.add(y, woodUnder(parts, near, x, y, z), dy);
    // what the edge takes is taken from all of the section
    if (z < high) sum.addArea(y, z, high, dy);
  };
  for (const { back, front } of chords) {
    const stops = panels(back.y, front.y, turns);
    for (let i = 1; i < stops.length; i++) {
      const [from, to] = [stops[i - 1] as number, stops[i] as number];
      const isCut = near.some((cut) => cut.removed(x, (from + to) / 2));
      // an even number: a line at x that touches a hole's side touches it in the middle
      between(from, to, isCut ? gauss(4) : plain, isCut ? addCut : addPlain);
    }
  }
  const whole = sum.area;
  const area = whole - bite.area;
  // the bite hangs from the uncut top
  const first = sum.z - (bite.area * high - bite.down);
  const second = sum.zz - (bite.area * high * high - 2 * high * bite.down + bite.down2);
  if (!(area > 0)) return { x, areaMm2: 0, centroidMm: [middle, 0], secondMm4: 0, torsionMm4: 0 };
  const [y, z] = [(sum.y - bite.y) / area, first / area];
  return {
    x,
    areaMm2: area,
    centroidMm: [y, z],
    secondMm4: Math.max(0, second - first * z),
    // as if the edge made the section thinner everywhere
    torsionMm4: sum.torsion() * (area / whole) ** 3,
  };
}
