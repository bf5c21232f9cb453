import type { Curves, Holes } from '../curves/curves.ts';
import { chordBreaks, chordsOf } from './chords.ts';
import { panels } from './gauss.ts';
import { once } from './once.ts';
import { facesOf, type Parts, partsOf } from './parts.ts';
import { type Slice, slice } from './slice.ts';

/** Share by which a section halfway may differ from what its neighbours tell before it is put between them. */
const OFF = 1e-3;
/** Nearest that sections are looked for without need, mm: a hole's side begins like a square root. */
const LEAST = 0.05;
/** A section is taken so far on either side of a place where something ends, mm. */
const HAIR = 1e-6;

/**
 * Sections square to X from tip to tip, in rising order: so many that area and bending stiffness between two of them
 * are told by `stiffnessBetween` within a thousandth.
 */
export function slicesAlong(curves: Curves, holes: Holes): readonly Slice[] {
  return both(curves)[holes]();
}

const both = once((curves: Curves) => {
  const found: Partial<Record<Holes, readonly Slice[]>> = {};
  const along = (holes: Holes) => () => {
    found[holes] ??= walk(curves, partsOf(curves, holes), breaksOf(curves, holes));
    return found[holes];
  };
  return { drilled: along('drilled'), reamed: along('reamed') };
});

function walk(curves: Curves, parts: Parts, breaks: readonly number[]): readonly Slice[] {
  const chords = chordsOf(curves.outline);
  const faces = facesOf(parts);
  const at = (x: number) => slice(parts, faces, chords(x), x);
  const { x0, x1 } = parts.plan.box;
  const stops = panels(x0, x1, breaks);
  const out: Slice[] = [];
  const put = (one: Slice) => {
    const last = out[out.length - 1];
    if (!last || one.x - last.x > 2 * HAIR || jumps(last, one)) out.push(one);
  };
  const fill = (a: Slice, b: Slice): void => {
    const middle = at((a.x + b.x) / 2);
    const halve = b.x - a.x > 2 * LEAST && !foretold(a, middle, b);
    if (halve) fill(a, middle);
    put(middle);
    if (halve) fill(middle, b);
  };
  for (let i = 1; i < stops.length; i++) {
    const [from, to] = [stops[i - 1] as number, stops[i] as number];
    // neighbouring stops are farther apart than two hairs
    const [a, b] = [at(from + HAIR), at(to - HAIR)];
    put(a);
    if (to - from > LEAST) fill(a, b);
    put(b);
  }
  return out;
}

const differ = (a: number, b: number) => Math.abs(a - b) > OFF * Math.max(a, b);

const jumps = (a: Slice, b: Slice) => differ(a.areaMm2, b.areaMm2) || differ(a.secondMm4, b.secondMm4);

/** Whether the section halfway between two is what they let expect. */
function foretold(a: Slice, middle: Slice, b: Slice): boolean {
  return (
    !differ(middle.areaMm2, (a.areaMm2 + b.areaMm2) / 2) &&
    !differ(middle.secondMm4, stiffnessBetween(a.secondMm4, b.secondMm4, 0.5))
  );
}

/** A second moment a share of the way from one section to the next: wood's height changes evenly, and I as its cube. */
export function stiffnessBetween(from: number, to: number, share: number): number {
  return (Math.cbrt(from) * (1 - share) + Math.cbrt(to) * share) ** 3;
}

/** x at which sections begin, end or change their law. */
function breaksOf(curves: Curves, holes: Holes): readonly number[] {
  const { plan, top, edge, cuts } = partsOf(curves, holes);
  const { x0, x1 } = plan.box;
  const reach = edge?.reach ?? 0;
  return [
    ...chordBreaks(curves.outline),
    ...top.joints(0),
    ...[reach / 2, reach].flatMap((r) => [x0 + r, x1 - r]),
    ...cuts.flatMap((cut) => cut.landmarks().map((p) => p[0])),
    ...curves.pins.flatMap((pin) => pin.outline[holes].flatMap(([r]) => [pin.at[0] - r, pin.at[0] + r])),
  ];
}
