import type { Design } from '../../src/design/design.ts';
import { DesignError, type Problem, tooLittle, tooMuch } from '../../src/design/problem.ts';
import type { Pin, Profile, Underside } from './curves.ts';
import { drop } from './profile.ts';
import type { Point } from './segment.ts';
import { handSign } from './slot.ts';
import { undersideHeight } from './underside.ts';

/** Least wood left anywhere that a cut could come near, mm: less breaks away under the tool. */
export const LEAST_WOOD = 0.5;

/** A reamer that widens the mouth by less, mm, leaves the hole as drilled. */
const LEAST_REAMED = 0.02;
/** Least difference between a bevel's diameter and the hole's, mm. */
const LEAST_BEVEL = 0.1;
/** Most that the crown's slope may be of the bevel's own: beyond, the bevel's rim runs far up the crown. */
const STEEPEST = 0.6;

/** Where each pin's centre lies in plan, mm, treble first. */
export function pinPlaces(design: Design): readonly Point[] {
  const { pins, saddle, strings } = design;
  const hand = handSign(design);
  const lean = pins.line === 'parallel' ? (hand * saddle.angle * Math.PI) / 180 : 0;
  return Array.from({ length: strings.count }, (_, i) => {
    const s = hand * (pins.spread / 2 - (i * pins.spread) / (strings.count - 1));
    return [s * Math.cos(lean), s * Math.sin(lean) - pins.behindSlot];
  });
}

/** The pin holes with their outlines as drilled and as reamed. Throws `DesignError` when bevel or mouth don't suit. */
export function pins(design: Design, profile: Profile, face: Underside): readonly Pin[] {
  const wrong = unsuited(design);
  if (wrong.length > 0) throw new DesignError(wrong);
  return pinPlaces(design).map((at) => pin(design, at, profile, face));
}

function unsuited(design: Design): readonly Problem[] {
  const p = design.pins;
  const out: Problem[] = [];
  if (p.taper > 0 && p.mouth < p.drill) {
    const remedy = 'Widen the mouth or take a smaller drill.';
    out.push(tooLittle('pins.mouth', p.mouth, p.drill, 'with this drill', remedy));
  }
  const hole = Math.max(p.drill, p.taper > 0 ? p.mouth : 0);
  if (p.bevel === 'cut' && p.bevelDiameter < hole + LEAST_BEVEL) {
    const remedy = 'Widen the bevel, or leave it out.';
    const why = 'or reaming takes it all';
    out.push(tooLittle('pins.bevelDiameter', p.bevelDiameter, hole + LEAST_BEVEL, why, remedy));
  }
  return out;
}

function pin(design: Design, at: Point, profile: Profile, face: Underside): Pin {
  const p = design.pins;
  const radius = profile.crownRadius;
  const x = Math.abs(at[0]);
  if (x > profile.crownEnd) {
    const most = (p.spread * profile.crownEnd) / x;
    const remedy = 'Narrow the pins’ spread or lengthen the middle block.';
    throw new DesignError([tooMuch('pins.spread', p.spread, most, 'in this middle block', remedy)]);
  }
  const top = profile.thickness - drop(radius, x);
  const slope = x / Math.sqrt(radius * radius - x * x);
  const bevel =
    p.bevel === 'cut'
      ? { radius: p.bevelDiameter / 2, flare: Math.tan((p.bevelAngle * Math.PI) / 360) }
      : undefined;
  const widest = Math.max(p.drill / 2, p.taper > 0 ? p.mouth / 2 : 0, bevel?.radius ?? 0);
  if (bevel && slope * bevel.flare > STEEPEST) {
    const most = (Math.atan(STEEPEST / slope) * 360) / Math.PI;
    const why = 'where the crown slopes as it does at the outer pins';
    const remedy = 'Take a smaller bevel angle or a flatter crown.';
    throw new DesignError([tooMuch('pins.bevelAngle', p.bevelAngle, most, why, remedy)]);
  }
  // up the slope the bevel's flare meets the crown higher than on the axis: carry the cut past that
  const over = 0.15 + (slope * widest) / (1 - slope * (bevel?.flare ?? 0));
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
      lid: top + over,
    });
  return {
    at,
    top,
    outline: { drilled: cut(false), reamed: cut(true) },
    reach: widest + (bevel?.flare ?? 0) * over,
  };
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
