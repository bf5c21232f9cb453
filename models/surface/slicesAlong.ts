import type { Curves, Holes } from '../curves/curves.ts';
import { holeRadius } from '../curves/holeRadius.ts';
import { undersideHeight } from '../curves/underside.ts';
import { chordBreaks, chordsOf } from './chords.ts';
import { edgeBites } from './edgeBites.ts';
import { panels } from './gauss.ts';
import { once } from './once.ts';
import { facesOf, type Parts, partsOf } from './parts.ts';
import { type Slice, slice } from './slice.ts';

/** Share by which a section halfway may differ from what its neighbours tell before it is put between them. */
const OFF = 5e-3;
/** Nearest that sections are looked for without need, mm: a hole's side begins like a square root. */
const LEAST = 0.12;
/** A section is taken so far on either side of a place where something ends, mm. */
const HAIR = 1e-6;

/**
 * Sections square to X from tip to tip, in rising order: so many that straight lines tell area and second moment
 * between two of them within a thousandth, but at the very side of a hole or of a round tip.
 */
export function slicesAlong(curves: Curves, holes: Holes): readonly Slice[] {
  return both(curves)[holes]();
}

const both = once((curves: Curves) => {
  const found: Partial<Record<Holes, readonly Slice[]>> = {};
  // beside the pins sections are the same however the holes are
  const beside = new Map<number, Slice>();
  const along = (holes: Holes) => () => {
    found[holes] ??= walk(curves, holes, beside);
    return found[holes];
  };
  return { drilled: along('drilled'), reamed: along('reamed') };
});

function walk(curves: Curves, holes: Holes, beside: Map<number, Slice>): readonly Slice[] {
  const parts = partsOf(curves, holes);
  const breaks = breaksOf(curves, parts, holes);
  const chords = chordsOf(curves.outline);
  const faces = facesOf(parts);
  const bites = edgeBites(curves);
  const at = (x: number): Slice => {
    const known = beside.get(x);
    if (known) return known;
    const made = slice(parts, faces, chords(x), bites(x));
    if (curves.pins.every((pin) => Math.abs(x - pin.at[0]) > pin.reach)) beside.set(x, made);
    return made;
  };
  const { x0, x1 } = parts.plan.box;
  const ends = [x0, x1, ...breaks.ends];
  const stops = panels(x0, x1, [...apart(breaks.bends, ends), ...breaks.ends]);
  const out: Slice[] = [];
  const fill = (a: Slice, b: Slice): void => {
    if (b.x - a.x < LEAST) return;
    const middle = at((a.x + b.x) / 2);
    const halve = !foretold(a, middle, b);
    if (halve) fill(a, middle);
    out.push(middle);
    if (halve) fill(middle, b);
  };
  let before = at(x0 + HAIR);
  out.push(before);
  for (const stop of stops.slice(1)) {
    const isEnd = ends.some((end) => Math.abs(end - stop) < 2 * HAIR);
    const here = at(isEnd ? stop - HAIR : stop);
    fill(before, here);
    out.push(here);
    const after = isEnd && stop < x1 - 2 * HAIR ? at(stop + HAIR) : here;
    if (after !== here && jumps(here, after)) out.push(after);
    before = out[out.length - 1] as Slice;
  }
  return out;
}

const differ = (a: number, b: number) => Math.abs(a - b) > OFF * Math.max(a, b);

const jumps = (a: Slice, b: Slice) => differ(a.areaMm2, b.areaMm2) || differ(a.secondMm4, b.secondMm4);

/** Whether the section halfway between two is what they let expect. */
function foretold(a: Slice, middle: Slice, b: Slice): boolean {
  return (
    !differ(middle.areaMm2, (a.areaMm2 + b.areaMm2) / 2) &&
    !differ(middle.secondMm4, (a.secondMm4 + b.secondMm4) / 2)
  );
}

/** Where sections change along x: where they bend, and where something may begin or end at once. */
interface Breaks {
  readonly bends: readonly number[];
  readonly ends: readonly number[];
}

function breaksOf(curves: Curves, parts: Parts, holes: Holes): Breaks {
  const { plan, top, edge, cuts } = parts;
  const { x0, x1 } = plan.box;
  const reach = edge?.reach ?? 0;
  const pins = curves.pins.flatMap(({ at: [x, y], outline }) => {
    const radii = [top.height(x, 0), undersideHeight(parts.underside, x, y)].map((z) =>
      holeRadius(outline[holes], z),
    );
    return [x, ...radii.flatMap((r) => [x - r, x + r])];
  });
  // a pin's hole is round: nothing of it ends at once
  const square = cuts.filter((_, i) => i === 0 || i > curves.pins.length);
  const outlines = [chordBreaks(curves.outline), ...square.map((cut) => cut.landmarks().map((p) => p[0]))];
  return {
    bends: [...top.joints(0), x0 + reach, x1 - reach, ...pins, ...outlines.flat()],
    ends: outlines.flatMap(walls),
  };
}

/** Those bends that aren't so near to another or to an end that sections aren't looked for between them. */
function apart(bends: readonly number[], ends: readonly number[]): readonly number[] {
  let last = Number.NEGATIVE_INFINITY;
  return [...bends]
    .sort((a, b) => a - b)
    .filter((bend) => {
      if (bend - last < LEAST / 2 || ends.some((end) => Math.abs(end - bend) < LEAST / 2)) return false;
      last = bend;
      return true;
    });
}

/** x of walls along Y: where two corners of one outline lie on a line. */
function walls(corners: readonly number[]): readonly number[] {
  const sorted = [...corners].sort((a, b) => a - b);
  return sorted.filter((x, i) => i > 0 && x - (sorted[i - 1] as number) < HAIR);
}
