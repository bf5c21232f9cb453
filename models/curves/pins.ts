import type { Design } from '../../src/design/design.ts';
import {
  anyFits,
  DesignError,
  type Problem,
  tooLittle,
  tooMuch,
  unfitting,
} from '../../src/design/problem.ts';
import type { Pin, Profile, Underside } from './curves.ts';
import { drop } from './profile.ts';
import { distance, type Point } from './segment.ts';
import { handSign } from './slot.ts';
import { stringPlaces } from './strings.ts';
import { undersideHeight } from './underside.ts';

/** Least wood left anywhere that a cut could come near, mm: less breaks away under the tool. */
export const LEAST_WOOD = 0.5;

/** Least wood between one hole and the next, mm, at the surface where bevels make them widest. */
export const LEAST_BETWEEN = 0.3;
/** A reamer that widens the mouth by less, mm, leaves the hole as drilled. */
const LEAST_REAMED = 0.02;
/** Least difference between a bevel's diameter and the hole's, mm. */
const LEAST_BEVEL = 0.1;
/** Most that the crown's slope may be of the bevel's own: beyond, the bevel's rim runs far up the crown. */
const STEEPEST = 0.6;

/**
 * Where each pin's centre lies in plan, mm, treble first: evenly along their line, or as the strings drawn out to the
 * pins' spread; every second one in a row of its own behind, if there are two.
 */
export function pinPlaces(design: Design): readonly Point[] {
  const { pins } = design;
  const hand = handSign(design);
  const lean = pins.line === 'parallel' ? (hand * design.saddle.angle * Math.PI) / 180 : 0;
  return alongLine(design).map((s, i) => {
    const back = pins.rows === 'two' && i % 2 === 1 ? pins.rowGap : 0;
    return [
      s * Math.cos(lean) + back * Math.sin(lean),
      s * Math.sin(lean) - pins.behindSlot - back * Math.cos(lean),
    ];
  });
}

/** Places along the pins' line from the centre line, mm, +x to the treble of a right-handed guitar. */
function alongLine(design: Design): readonly number[] {
  const { pins, strings } = design;
  if (pins.spacing === 'strings') {
    return stringPlaces(design).map((x) => (x * pins.spread) / strings.spread);
  }
  const step = pins.spread / (strings.count - 1);
  return Array.from({ length: strings.count }, (_, i) => handSign(design) * (pins.spread / 2 - i * step));
}

/**
 * The pin holes with their outlines as drilled and as reamed. Throws `DesignError` when bevel or mouth don't suit, or
 * the row finds no room in the middle block.
 */
export function pins(design: Design, profile: Profile, face: Underside): readonly Pin[] {
  const wrong = [...unsuited(design), ...steep(design, profile)];
  if (wrong.length > 0) throw new DesignError(wrong);
  if (!rowFits(design, profile)) throw new DesignError([crowded(design, profile)]);
  return pinPlaces(design).map((at) => pin(design, at, profile, face));
}

/** Least diameter of a bevel that reaming doesn't take away, mm. */
export function leastBevel({ pins: p }: Design): number {
  const least = Math.max(p.drill, p.taper > 0 ? p.mouth : 0) + LEAST_BEVEL;
  return Math.round(least * 1e6) / 1e6; // 2.7 + 0.1 is a little more than 2.8 to a computer
}

function unsuited(design: Design): readonly Problem[] {
  const p = design.pins;
  const out: Problem[] = [];
  if (p.taper > 0 && p.mouth < p.drill) {
    const remedy = 'Widen the mouth or take a smaller drill.';
    out.push(tooLittle('pins.mouth', p.mouth, p.drill, 'with this drill', remedy));
  }
  const least = leastBevel(design);
  if (p.bevel === 'cut' && p.bevelDiameter < least) {
    const remedy = 'Widen the bevel, or leave it out.';
    out.push(tooLittle('pins.bevelDiameter', p.bevelDiameter, least, 'or reaming takes it all', remedy));
  }
  return out;
}

/** A wide bevel on a steep crown would run far up the slope. */
function steep({ pins: p }: Design, { crownRadius, crownEnd }: Profile): readonly Problem[] {
  const slope = slopeAt(crownRadius, Math.min(p.spread / 2, crownEnd));
  if (p.bevel === 'none' || slope * flareOf(p.bevelAngle) <= STEEPEST) return [];
  const most = (Math.atan(STEEPEST / slope) * 360) / Math.PI;
  const why = 'where the crown slopes as it does at the outer pins';
  const remedy = 'Take a smaller bevel angle or a flatter crown.';
  return [tooMuch('pins.bevelAngle', p.bevelAngle, most, why, remedy)];
}

/**
 * What to change for a row that finds no room: its spread, or, where no spread helps, whichever of bevel, mouth and
 * drill makes the holes as wide as they are.
 */
function crowded(design: Design, profile: Profile): Problem {
  const { count } = design.strings;
  const changed = (key: 'spread' | Width, value: number): Design => ({
    ...design,
    pins: { ...design.pins, [key]: value },
  });
  const fitsSomewhere = (d: Design) =>
    anyFits('pins.spread', (spread) => rowFits({ ...d, pins: { ...d.pins, spread } }, profile));
  if (fitsSomewhere(design)) {
    const why = `for ${count} holes of this size in this middle block`;
    const remedy = 'Change the spread, make bevel, mouth or drill smaller, or lengthen the middle block.';
    const fits = (spread: number) => rowFits(changed('spread', spread), profile);
    return unfitting('pins.spread', design.pins.spread, fits, why, remedy);
  }
  const key = widest(design);
  const path = `pins.${key}`;
  const suits = (width: number, stands: (d: Design) => boolean) => {
    const narrower = changed(key, width);
    return unsuited(narrower).length === 0 && stands(narrower);
  };
  const here = (width: number) => suits(width, (d) => rowFits(d, profile));
  const somewhere = (width: number) => suits(width, fitsSomewhere);
  const why = `for ${count} holes beside each other in this middle block`;
  const remedy = 'Make the holes smaller, take fewer strings or lengthen the middle block.';
  return unfitting(path, design.pins[key], anyFits(path, here) ? here : somewhere, why, remedy);
}

/** Whether all holes stand on the crown, with wood between each and the next. */
function rowFits(design: Design, { crownRadius, crownEnd }: Profile): boolean {
  const row = pinPlaces(design).map((at) => ({ at, x: Math.abs(at[0]) }));
  if (row.some(({ x }) => x >= crownEnd)) return false;
  const holes = row.map(({ at, x }) => ({ at, x, reach: reachOf(design, slopeAt(crownRadius, x)) }));
  return holes.every(({ at, x, reach }, i) => {
    // with two rows the nearest hole is not always the next
    const apart = (next: (typeof holes)[number]) =>
      distance(at, next.at) - reach - next.reach >= LEAST_BETWEEN;
    return x + reach <= crownEnd && holes.slice(i + 1).every(apart);
  });
}

/** Fall of the crown at x, mm for each mm. */
function slopeAt(crownRadius: number, x: number): number {
  return x / Math.sqrt(crownRadius * crownRadius - x * x);
}

/** How fast a countersink of this included angle widens, mm of radius for each mm of height. */
function flareOf(bevelAngle: number): number {
  return Math.tan((bevelAngle * Math.PI) / 360);
}

type Width = 'drill' | 'mouth' | 'bevelDiameter';

/** Which of the diameters that a hole has is the greatest at the surface. */
function widest({ pins: p }: Design): Width {
  if (p.bevel === 'cut') return 'bevelDiameter'; // less than the others it is refused before
  return p.taper > 0 ? 'mouth' : 'drill';
}

/** Radius of the hole at the surface over its axis, reamed and bevelled, mm. */
function widestOf(design: Design): number {
  return design.pins[widest(design)] / 2;
}

/** How far over the surface on its axis a hole is cut, mm: up the slope its flare meets the crown higher than there. */
function overOf(design: Design, slope: number): number {
  const flare = design.pins.bevel === 'cut' ? flareOf(design.pins.bevelAngle) : 0;
  return 0.15 + (slope * widestOf(design)) / (1 - slope * flare);
}

/** Largest radius of the hole at the surface, on a crown that slopes as given, mm. */
function reachOf(design: Design, slope: number): number {
  const flare = design.pins.bevel === 'cut' ? flareOf(design.pins.bevelAngle) : 0;
  return widestOf(design) + flare * overOf(design, slope);
}

function pin(design: Design, at: Point, profile: Profile, face: Underside): Pin {
  const p = design.pins;
  const x = Math.abs(at[0]);
  const top = profile.thickness - drop(profile.crownRadius, x);
  const slope = slopeAt(profile.crownRadius, x);
  const bevel = p.bevel === 'cut' ? { radius: p.bevelDiameter / 2, flare: flareOf(p.bevelAngle) } : undefined;
  const bottom = undersideHeight(face, at[0], at[1]) - 2;
  const cut = (reamed: boolean): readonly Point[] =>
    holeOutline({
      drill: p.drill / 2,
      taper:
        reamed && p.taper > 0 && p.mouth > p.drill + LEAST_REAMED
          ? { mouth: p.mouth / 2, slope: Math.tan((p.taper * Math.PI) / 360) }
          : undefined,
      bevel,
      top,
      bottom,
      lid: top + overOf(design, slope),
    });
  return { at, top, outline: { drilled: cut(false), reamed: cut(true) }, reach: reachOf(design, slope) };
}

interface Hole {
  readonly drill: number;
  readonly taper: { readonly mouth: number; readonly slope: number } | undefined;
  readonly bevel: { readonly radius: number; readonly flare: number } | undefined;
  readonly top: number;
  readonly bottom: number;
  readonly lid: number;
}

/** Half outline (r, z) of a hole: at each height the widest of drill, reamer and countersink. */
function holeOutline(h: Hole): readonly Point[] {
  const drill = () => h.drill;
  const taper = (z: number) => (h.taper ? h.taper.mouth - (h.top - z) * h.taper.slope : 0);
  const bevel = (z: number) => (h.bevel ? h.bevel.radius - (h.top - z) * h.bevel.flare : 0);
  const radius = (z: number) => Math.max(drill(), taper(z), bevel(z));
  const turns: number[] = [];
  const meet = (r0: number, s0: number, r1: number, s1: number) => h.top - (r1 - r0) / (s1 - s0);
  if (h.taper) turns.push(meet(h.drill, 0, h.taper.mouth, h.taper.slope));
  if (h.bevel) {
    turns.push(meet(h.drill, 0, h.bevel.radius, h.bevel.flare));
    if (h.taper) turns.push(meet(h.taper.mouth, h.taper.slope, h.bevel.radius, h.bevel.flare));
  }
  const heights = [
    h.bottom,
    ...turns.filter((z) => z > h.bottom + 1e-6 && z < h.lid - 1e-6).sort((a, b) => a - b),
    h.lid,
  ];
  const wall = heights.map((z): Point => [radius(z), z]);
  // a crossing hidden under the widest of the three is no corner
  const kept = wall.filter((p, i) => {
    const [a, b] = [wall[i - 1], wall[i + 1]];
    if (!a || !b) return true;
    const straight = a[0] + ((p[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
    return Math.abs(straight - p[0]) > 1e-9;
  });
  return [[0, h.bottom], ...kept, [0, h.lid]];
}
