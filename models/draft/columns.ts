import type { Column, Stake } from './columnSolid.ts';
import { chordsOf, type Half, levelsOf, type Place, placeOn } from './half.ts';
import { stations, type Wish, wishesAt } from './stations.ts';

/** How a wall meets floor and lid. */
export interface Wall {
  /** x at which the wall that stands on a place of the outline meets the lid, mm. */
  readonly lidX: (place: Place, inside: 1 | -1) => number;
  /** How far along the outline the foot of a place's upright stands ahead of it, mm; none: straight below. */
  readonly lead?: (place: Place) => number;
  /** The upright at a place, and the place of its foot. */
  readonly stake: (place: Place, inside: 1 | -1, foot: Place) => Stake;
}

/**
 * The columns of a solid over an outline. Front and back of a column are chosen so that they meet the lid at the same
 * x: the lid, whose height depends on x alone, is then made of exact strips.
 *
 * @param wishes columns that floor and lid want
 * @param rows number of pieces into which a straight end wall is divided
 * @param deviation how far chords may stray from arcs, mm
 */
export function columns(
  { back, front }: { readonly back: Half; readonly front: Half },
  wall: Wall,
  wishes: readonly Wish[],
  rows: number,
  deviation: number,
): readonly Column[] {
  const sides = [back, front].map((half) => sampled(half, wall, deviation));
  const [behind, ahead] = sides as [Sampled, Sampled];
  const xs = stations(
    [...wishes, ...sides.flatMap((s) => [...s.wishes, ...s.levels.map((x) => ({ x, room: 0 }))])],
    behind.xs[0] as number,
    behind.xs[behind.xs.length - 1] as number,
  );
  const at = (half: Half, s: number) => {
    const place = placeOn(half, s);
    return wall.stake(place, half.inside, wall.lead ? placeOn(half, s + wall.lead(place)) : place);
  };
  return [
    end(wall, placeOn(back, 0), placeOn(front, 0), rows),
    ...xs.map((x) => [at(back, behind.find(x)), at(front, ahead.find(x))]),
    end(wall, placeOn(back, back.length), placeOn(front, front.length), rows),
  ];
}

/** The stakes of an end: along a straight end wall, or the one that back and front share. */
function end(wall: Wall, back: Place, front: Place, rows: number): Column {
  const stake = (p: Place) => wall.stake(p, 1, p);
  const width = front.y - back.y;
  if (width < 1e-6) return [stake(back)];
  return Array.from({ length: rows + 1 }, (_, k) => stake({ ...back, y: back.y + (k * width) / rows }));
}

interface Sampled {
  /** x of the lid at the samples, ascending. */
  readonly xs: readonly number[];
  readonly wishes: readonly Wish[];
  /** x of the lid over the feet that stand where the outline runs level. */
  readonly levels: readonly number[];
  /** Length along the half at which its wall meets the lid at x. */
  readonly find: (x: number) => number;
}

function sampled(half: Half, wall: Wall, deviation: number): Sampled {
  const lidX = (s: number) => wall.lidX(placeOn(half, s), half.inside);
  const { lead } = wall;
  const chords = [...chordsOf(half, deviation), ...(lead ? leads(half, lead) : [])].sort((a, b) => a - b);
  const xs = chords.map(lidX);
  return {
    xs,
    wishes: wishesAt(xs),
    levels: levelsOf(half).map((s) => lidX(lead ? over(half, lead, s) : s)),
    find: (x) => {
      const i = Math.max(
        1,
        xs.findIndex((one) => one >= x),
      );
      return crossing(
        (s) => lidX(s) - x,
        chords[i - 1] as number,
        chords[i] as number,
        (xs[i - 1] as number) - x,
        (xs[i] as number) - x,
      );
    },
  };
}

/** Places whose feet stand where a half's pieces join: a wall's lower points need a corner there too. */
function leads(half: Half, lead: (place: Place) => number): readonly number[] {
  return half.pieces.map(({ start }) => over(half, lead, start)).filter((s) => s > 0 && s < half.length);
}

/** The place whose foot stands `s` mm along a half. A foot's lead hardly changes along the outline: three rounds do. */
function over(half: Half, lead: (place: Place) => number, s: number): number {
  let at = s;
  for (let i = 0; i < 3; i++) at = s - lead(placeOn(half, at));
  return at;
}

/** Where a rising function is 0, between `a` and `b`: false position, halving the value of an end that stays (Illinois). */
function crossing(f: (s: number) => number, a: number, b: number, fa: number, fb: number): number {
  let [lo, hi, flo, fhi] = [a, b, fa, fb];
  let stayed = 0;
  for (let i = 0; i < 60; i++) {
    if (flo >= -EXACT) return lo;
    if (fhi <= EXACT) return hi;
    const s = lo + ((hi - lo) * flo) / (flo - fhi);
    const fs = f(s);
    if (fs > 0) {
      [hi, fhi] = [s, fs];
      if (stayed === 1) flo /= 2;
      stayed = 1;
    } else {
      [lo, flo] = [s, fs];
      if (stayed === -1) fhi /= 2;
      stayed = -1;
    }
  }
  return (lo + hi) / 2;
}

/** A column that stands this near to its x stands on it, mm. */
const EXACT = 1e-7;
