import type { Curves } from '../curves/curves.ts';
import type { EdgeCut } from '../curves/rim/rim.ts';
import { type Chord, chordBreaks, chordsOf } from './chords.ts';
import { between, gauss, panels, type Rule } from './gauss.ts';
import { once } from './once.ts';
import { type Blank, blankOf } from './parts.ts';
import { topOver } from './surface.ts';

/** What the edge takes of the section at x: its area, mm², and that times y, the depth below the uncut top, and its square. */
export interface Bite {
  readonly x: number;
  readonly area: number;
  readonly y: number;
  readonly down: number;
  readonly down2: number;
}

/** Share of what is left of the section by which a bite halfway may differ from what its neighbours tell. */
const OFF = 1e-3;
/** Nearest that bites are looked for, mm. */
const LEAST = 0.2;
/** Room beyond the edge's reach, and how far from the tips the first and last bite are, mm: for rounding. */
const SLACK = 1e-6;
/** A top that slopes less, dz/dx, draws a round-over inward by less than a hundredth of what it takes. */
const GENTLE = 0.15;

/**
 * What the edge takes of any section square to X, told from sections that are near enough to each other: of the
 * section itself right to a thousandth.
 */
export const edgeBites = once((curves: Curves): ((x: number) => Bite) => {
  const blank = blankOf(curves);
  const { edge, plan, top } = blank;
  if (!edge) return (x) => ({ x, area: 0, y: 0, down: 0, down2: 0 });
  const chords = chordsOf(plan.pieces);
  const at = (x: number) => bite(blank, edge, chords(x), x);
  const { x0, x1 } = plan.box;
  const stops = panels(x0 + SLACK, x1 - SLACK, [
    ...chordBreaks(plan.pieces),
    ...top.joints(0),
    x0 + edge.reach,
    x1 - edge.reach,
  ]);
  const section = (x: number) =>
    chords(x).reduce((sum, c) => sum + c.front.y - c.back.y, 0) * top.height(x, 0);
  let last = at(stops[0] as number);
  const found = [last];
  const fill = (a: Bite, b: Bite): void => {
    if (b.x - a.x < LEAST) return;
    const middle = at((a.x + b.x) / 2);
    const halve = Math.abs(middle.area - (a.area + b.area) / 2) > OFF * (section(middle.x) - middle.area);
    if (halve) fill(a, middle);
    found.push(middle);
    if (halve) fill(middle, b);
  };
  for (const stop of stops.slice(1)) {
    const next = at(stop);
    fill(last, next);
    found.push(next);
    last = next;
  }
  return (x) => told(found, x);
});

/** The bite at x by its two neighbours. */
function told(bites: readonly Bite[], x: number): Bite {
  let [low, high] = [0, bites.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((bites[middle] as Bite).x <= x) low = middle;
    else high = middle;
  }
  const [a, b] = [bites[low] as Bite, bites[high] as Bite];
  const share = Math.max(0, Math.min(1, (x - a.x) / (b.x - a.x)));
  const mix = (of: (bite: Bite) => number) => of(a) + share * (of(b) - of(a));
  return {
    x,
    area: mix((o) => o.area),
    y: mix((o) => o.y),
    down: mix((o) => o.down),
    down2: mix((o) => o.down2),
  };
}

function bite(blank: Blank, edge: EdgeCut, chords: readonly Chord[], x: number): Bite {
  const high = blank.top.height(x, 0);
  const sum = { x, area: 0, y: 0, down: 0, down2: 0 };
  const add = (y: number, dy: number) => {
    const depth = high - topOver(blank, x, y);
    const area = depth * dy;
    sum.area += area;
    sum.y += area * y;
    sum.down += (area * depth) / 2;
    sum.down2 += (area * depth * depth) / 3;
  };
  for (const chord of chords) {
    const { stops, clearFrom, clearTo } = bands(blank, edge, chord, x);
    // at a tip all of a section is edge, and on a slope a chamfer ends short of where it is looked for
    const isPlain = clearFrom < clearTo && Math.abs(blank.top.slope(x, 0)) < GENTLE;
    const rule = gauss(isPlain ? 3 : 5);
    for (let i = 1; i < stops.length; i++) {
      const [from, to] = [stops[i - 1] as number, stops[i] as number];
      if (from >= clearFrom - SLACK && to <= clearTo + SLACK) continue;
      if (i === 1) fromOutline(from, to, rule, add);
      else if (i === stops.length - 1) fromOutline(to, from, rule, add);
      else between(from, to, rule, add);
    }
  }
  return sum;
}

/** A chord from stop to stop, and from where to where the edge reaches nothing. */
interface Bands {
  readonly stops: readonly number[];
  readonly clearFrom: number;
  readonly clearTo: number;
}

function bands({ plan, top }: Blank, edge: EdgeCut, { back, front }: Chord, x: number): Bands {
  const middle = (back.y + front.y) / 2;
  // how wide a wall's band of this depth looks along Y, where the chord has room for it
  const inward = (depth: number) => [
    Math.min(middle, back.y + depth * Math.hypot(1, back.slope)),
    Math.max(middle, front.y - depth * Math.hypot(1, front.slope)),
  ];
  // a ball reaches beyond its radius where the top slopes: by so little on a crown that it isn't looked at
  const round = edge.section === 'arc';
  const radius = round ? edge.reach / 2 : edge.reach;
  const slope = round ? Math.abs(top.slope(x, 0)) : 0;
  const reach = radius * (1 + (slope < GENTLE ? 0 : slope / Math.hypot(1, slope)));
  const [from, to] = inward(reach + SLACK) as [number, number];
  const touched = reach > radius ? inward(radius) : [];
  if (from < to && !plan.nearest(x, middle, reach + (to - from) / 2))
    return { stops: panels(back.y, front.y, [...touched, from, to]), clearFrom: from, clearTo: to };
  const joints = plan.pieces.filter((s) => Math.abs(s.from[0] - x) < 2 * edge.reach).map((s) => s.from[1]);
  const stops = panels(back.y, front.y, [...touched, from, to, ...joints]);
  return { stops, clearFrom: front.y, clearTo: back.y };
}

/** As `between` from the outline inward, where a round-over begins like a square root. */
function fromOutline(
  outline: number,
  inner: number,
  rule: Rule,
  visit: (y: number, weight: number) => void,
): void {
  const span = inner - outline;
  between(0, 1, rule, (q, dq) => visit(outline + span * q * q, 2 * q * Math.abs(span) * dq));
}
