import type { Design } from '../../src/design/design.ts';
import { DesignError, type Problem, tooLittle, tooMuch, unfitting } from '../../src/design/problem.ts';
import type { Curves, Profile } from './curves.ts';
import { LEAST_WOOD } from './pins.ts';
import { profile } from './profile.ts';
import { topHeight } from './topHeight.ts';
import { undersideHeight } from './underside.ts';

/** How far a tangent arc must exceed the round-over that rolls along it: the ball must turn inside it. */
const ROLL = 1.25;

/** Smallest edge worth offering in place of a larger one, mm. */
const LEAST_EDGE = 0.2;

/** Size of the top edge's round-over or chamfer, mm; 0 when it is left square. */
export function edgeSize(design: Design): number {
  return design.top.edge === 'none' ? 0 : design.top.edgeSize;
}

/** Whether the wings keep their wood, and the top edge's round-over or chamfer finds room all round. */
export function edgeClearance(design: Design, curves: Curves): readonly Problem[] {
  return [...edgeOnShoulder(design), ...edgeOnOutline(design, curves), ...wing(design, curves)];
}

function edgeOnShoulder(design: Design): Problem[] {
  const least = ROLL * edgeSize(design);
  if (design.top.shoulder >= least) return [];
  const remedy = 'Take a larger shoulder or a smaller edge.';
  return [tooLittle('top.shoulder', design.top.shoulder, least, 'with this edge', remedy)];
}

/** The edge's ball turns inside every arc that swells outward: corners, knees, bellies, tips. */
function edgeOnOutline(design: Design, { outline }: Curves): Problem[] {
  const size = edgeSize(design);
  if (size === 0) return [];
  const f = design.footprint;
  const corners = (['cornerFront', 'cornerBack'] as const).filter(
    (corner) => f.tip !== 'round' && f[corner] < ROLL * size,
  );
  if (corners.length > 0) {
    const remedy = 'Take a larger corner radius or a smaller edge.';
    return corners.map((c) => tooLittle(`footprint.${c}`, f[c], ROLL * size, 'with this edge', remedy));
  }
  const tightest = Math.min(
    ...outline.map((s) => (s.kind === 'arc' && s.turn === 1 ? s.radius : Number.POSITIVE_INFINITY)),
  );
  if (tightest >= ROLL * size - 1e-9) return []; // a drawn arc keeps its radius to the last figure but one
  const why = `where the outline curves as tightly as here: ${Math.round(tightest * 100) / 100} mm`;
  const remedy = 'Take a smaller edge, or ease the sweep, the knee or the tip.';
  return [tooMuch('top.edgeSize', size, tightest / ROLL, why, remedy)];
}

/**
 * The wing must keep wood under its edge at the tip, and between block and tip as well: a dome rises toward the middle,
 * the wing may not.
 */
function wing(design: Design, { profile: drawn, underside }: Curves): Problem[] {
  const { top } = design;
  const half = design.footprint.length / 2;
  const size = edgeSize(design);
  const thinnest = (p: Profile) =>
    leastOn((x) => topHeight(p, x) - undersideHeight(underside, x, 0), p.crownEnd, half);
  const room = thinnest(drawn) - LEAST_WOOD;
  if (room >= size) return [];
  if (size > 0 && room >= LEAST_EDGE) {
    const remedy = 'Take a smaller edge, a thicker tip or a flatter underside.';
    return [tooMuch('top.edgeSize', size, room, 'where the wing is thinnest', remedy)];
  }
  const tipFloor = topHeight(drawn, half) - top.tip;
  const fits = (tip: number) => {
    const other = tryProfile({ ...design, top: { ...top, tip } }, tipFloor);
    return other !== undefined && thinnest(other) >= LEAST_WOOD + size;
  };
  const remedy = 'Make the tip thicker, the wing rise more, the edge smaller or the underside flatter.';
  return [unfitting('top.tip', top.tip, fits, 'over this underside', remedy)];
}

function tryProfile(design: Design, tipFloor: number): Profile | undefined {
  try {
    return profile(design, tipFloor);
  } catch (error) {
    if (error instanceof DesignError) return undefined;
    throw error;
  }
}

/** Least value of a function that falls and then rises between a and b, by thirds. */
function leastOn(f: (x: number) => number, a: number, b: number): number {
  let [low, high] = [a, b];
  for (let i = 0; i < 60; i++) {
    const third = (high - low) / 3;
    if (f(low + third) <= f(high - third)) high -= third;
    else low += third;
  }
  return f((low + high) / 2);
}
