import type { Design } from '../../src/design/design.ts';
import {
  DesignError,
  type Problem,
  rangeOf,
  tooLittle,
  tooMuch,
  unfitting,
} from '../../src/design/problem.ts';
import { mirrorImage } from './chain.ts';
import type { Profile } from './curves.ts';
import { fretboardRadius, fretPlace } from './fretboard.ts';
import { joined } from './outline.ts';
import { meetCircles } from './roundCorner.ts';
import { arc, type Chain, distance, LEAST_PIECE, line, type Point, type Segment } from './segment.ts';

/** How far the profile runs on beyond the tips, mm: the cut must clear the wood. */
const BEYOND = 3;
/** Least height of the block's corner over the wing's run, mm: with less there is no step to blend. */
const LEAST_STEP = 0.3;

/** Least rise of a hollow wing, mm: with less it is a straight one. */
const LEAST_RISE = 0.2;
/** Least length of the wing's run that the blend leaves, mm. */
const LEAST_RUN = 1;
/** Least angle by which the top turns down where the crown ends, radians. */
const LEAST_TURN = 0.02;
/** Tightest crown that a fretboard's cone may give, mm: the tightest that can be set by hand. */
const LEAST_CROWN = 150;

/** Crown radius in use, mm: the fretboard's at the saddle, or the one set by hand. */
export function crownRadius(design: Design): number {
  return design.top.crown === 'set'
    ? design.top.crownRadius
    : fretboardRadius(design.guitar, design.guitar.scale + design.saddle.setback);
}

/**
 * The top in elevation: crown arc over the middle block, a rounded shoulder, a hollow blend and the wing's run to a tip
 * that stands `tipFloor` + tip thickness high; one chain of tangent lines and arcs. Throws `DesignError`.
 *
 * The run leaves the tip straight or in a hollow that is level there, and would stand wingRise higher where the block
 * ends. The blend is the arc that touches the run and passes through the crown's end; the shoulder touches crown and
 * blend.
 *
 * @param tipFloor z of the glue face at the tip's middle, mm
 */
export function profile(design: Design, tipFloor: number): Profile {
  const { top } = design;
  const radius = crownRadius(design);
  const tight = tooTight(design);
  if (tight) throw new DesignError([tight]);
  const half = design.footprint.length / 2;
  const blockEnd = top.block / 2;
  if (blockEnd > half - 4) {
    const remedy = 'Shorten the middle block or lengthen the bridge.';
    throw new DesignError([tooMuch('top.block', top.block, 2 * half - 8, 'on this length', remedy)]);
  }
  const corner: Point = [blockEnd, top.thickness - drop(radius, blockEnd)];
  const tip: Point = [half, tipFloor + top.tip];
  const step = corner[1] - (tip[1] + top.wingRise);
  if (step < LEAST_STEP) throw new DesignError([noStep(design, LEAST_STEP - step)]);
  const run = wingRun(top.wing, top.wingRise, tip, blockEnd);
  if ('code' in run) throw new DesignError([run]);
  const blendOf = (r: number) => blendArc(run, corner, r, Math.asin(blockEnd / radius));
  const blend = blendOf(top.blend);
  if (!blend) {
    const why = 'between this step, the wing and the crown’s own slope';
    const remedy = 'Change the blend, the height of the step, the length of the block or the crown.';
    const fits = (r: number) => blendOf(r) !== undefined;
    throw new DesignError([unfitting('top.blend', top.blend, fits, why, remedy)]);
  }
  const shoulderOf = (r: number) => withShoulder(radius, top.thickness, r, corner, blend, run);
  const right = shoulderOf(top.shoulder);
  if (!right) {
    const why = 'so that some of the crown and some of the blend are left';
    const remedy = 'Take a smaller shoulder, a smaller blend, a flatter crown or a higher step.';
    const fits = (r: number) => shoulderOf(r) !== undefined;
    throw new DesignError([unfitting('top.shoulder', top.shoulder, fits, why, remedy)]);
  }
  const left = mirrorImage(right.chain);
  const crown = joined(left[left.length - 1] as Segment, right.chain[0] as Segment);
  return {
    chain: [...left.slice(0, -1), crown, ...right.chain.slice(1)],
    thickness: top.thickness,
    crownRadius: radius,
    crownEnd: right.crownEnd,
    runStart: blend.touch[0],
  };
}

/**
 * What to change for a block that doesn't stand over the wing's run, mm short by `lacking`: the tip, or where no tip is
 * thin enough, the wing's rise, or where that doesn't suffice either, the thickness.
 */
function noStep({ top }: Design, lacking: number): Problem {
  const why = 'with this block, crown and wing rise';
  const remedy =
    'Make the tip thinner, the wing rise less, the block thicker or shorter, or the crown flatter.';
  const tip = top.tip - lacking;
  const thinnest = rangeOf('top.tip').min;
  if (tip >= thinnest) return tooMuch('top.tip', top.tip, tip, why, remedy);
  const leastRise = top.wing === 'hollow' ? LEAST_RISE : rangeOf('top.wingRise').min;
  const beside = 'with this block, crown and wing tip';
  const rise = top.wingRise - lacking;
  if (rise >= leastRise) return tooMuch('top.wingRise', top.wingRise, rise, beside, remedy);
  const overThinnest = rise + top.tip - thinnest;
  if (overThinnest >= leastRise)
    return tooMuch('top.wingRise', top.wingRise, overThinnest, 'with this block and crown', remedy);
  const over = 'with this block, crown, wing tip and wing rise';
  return tooLittle('top.thickness', top.thickness, top.thickness + lacking, over, remedy);
}

/** A fretboard that narrows toward the bridge makes a cone whose radius over the saddle can be anything, even negative. */
export function tooTight({ guitar, saddle }: Design): Problem | undefined {
  const radius = fretboardRadius(guitar, guitar.scale + saddle.setback);
  if (guitar.fretboard === 'constant' || radius >= LEAST_CROWN) return undefined;
  const far = fretPlace(guitar.scale, guitar.fretboardFret);
  const nut = guitar.fretboardRadius;
  const least = nut + ((LEAST_CROWN - nut) * far) / (guitar.scale + saddle.setback);
  const why = `for a crown of at least ${LEAST_CROWN} mm over the saddle`;
  const remedy = 'Measure the fretboard again: it carries the strings over the saddle.';
  return tooLittle('guitar.fretboardRadiusAtFret', guitar.fretboardRadiusAtFret, least, why, remedy);
}

/** How far an arc of radius R has fallen at x from its top, mm. */
export function drop(radius: number, x: number): number {
  return (x * x) / (radius + Math.sqrt(radius * radius - x * x));
}

interface Run {
  /** Straight: unit vector from the tip inward is (−cos, sin) of this slope angle, radians. */
  readonly slope: number;
  /** Radius of a hollow run, centre straight above the tip; infinite when straight. */
  readonly radius: number;
  readonly tip: Point;
}

function wingRun(kind: 'straight' | 'hollow', rise: number, tip: Point, blockEnd: number): Run | Problem {
  const dx = tip[0] - blockEnd;
  if (kind === 'straight') return { slope: Math.atan2(rise, dx), radius: Number.POSITIVE_INFINITY, tip };
  const remedy = 'A hollow wing rises toward the block: give it some rise, or make it straight.';
  if (rise < LEAST_RISE) return tooLittle('top.wingRise', rise, LEAST_RISE, 'for a hollow wing', remedy);
  if (rise > 0.9 * dx) return tooMuch('top.wingRise', rise, 0.9 * dx, 'for a hollow wing', remedy);
  return { slope: 0, radius: (dx * dx + rise * rise) / (2 * rise), tip };
}

interface Blend {
  readonly centre: Point;
  readonly radius: number;
  /** Where it touches the run. */
  readonly touch: Point;
}

/**
 * The arc of `radius` that touches the run and passes through the crown's end, falling away from it; undefined where
 * there is none between the crown's own slope there (`crownFall`, radians) and the wing's tip.
 */
function blendArc(run: Run, corner: Point, radius: number, crownFall: number): Blend | undefined {
  const blend =
    run.radius === Number.POSITIVE_INFINITY ? onStraight(run, corner, radius) : onHollow(run, corner, radius);
  if (!blend || blend.centre[1] < corner[1] + 0.02 || blend.centre[0] <= corner[0]) return undefined;
  if (blend.touch[0] > run.tip[0] - LEAST_RUN) return undefined;
  const fall = Math.acos(Math.min(1, (blend.centre[1] - corner[1]) / radius));
  return fall < crownFall + LEAST_TURN ? undefined : blend;
}

function onStraight(run: Run, corner: Point, radius: number): Blend | undefined {
  const u: Point = [Math.cos(run.slope), -Math.sin(run.slope)];
  const n: Point = [Math.sin(run.slope), Math.cos(run.slope)];
  const rel: Point = [corner[0] - run.tip[0], corner[1] - run.tip[1]];
  const along = rel[0] * u[0] + rel[1] * u[1];
  const over = rel[0] * n[0] + rel[1] * n[1];
  if (over <= 0 || over > radius) return undefined;
  const foot = along + Math.sqrt(radius ** 2 - (radius - over) ** 2);
  const touch: Point = [run.tip[0] + foot * u[0], run.tip[1] + foot * u[1]];
  return { touch, radius, centre: [touch[0] + radius * n[0], touch[1] + radius * n[1]] };
}

function onHollow(run: Run, corner: Point, radius: number): Blend | undefined {
  const middle: Point = [run.tip[0], run.tip[1] + run.radius];
  const found = meetCircles(middle, run.radius - radius, corner, radius);
  const centre = found.reduce<Point | undefined>(
    (best, c) => (!best || c[0] > best[0] ? c : best),
    undefined,
  );
  if (!centre) return undefined;
  const share = run.radius / (run.radius - radius);
  const touch: Point = [
    middle[0] + (centre[0] - middle[0]) * share,
    middle[1] + (centre[1] - middle[1]) * share,
  ];
  return { centre, radius, touch };
}

interface Right {
  readonly chain: Chain;
  readonly crownEnd: number;
}

/** The right half of the profile, from the crown's top outward; undefined where the shoulder finds no room. */
function withShoulder(
  crown: number,
  thickness: number,
  shoulder: number,
  corner: Point,
  blend: Blend,
  run: Run,
): Right | undefined {
  const below: Point = [0, thickness - crown];
  const centres = meetCircles(below, crown - shoulder, blend.centre, blend.radius + shoulder);
  const centre = centres.reduce<Point | undefined>(
    (best, c) => (!best || distance(c, corner) < distance(best, corner) ? c : best),
    undefined,
  );
  if (!centre) return undefined;
  const toward = (from: Point, radius: number): Point => {
    const l = distance(from, centre);
    return [from[0] + ((centre[0] - from[0]) * radius) / l, from[1] + ((centre[1] - from[1]) * radius) / l];
  };
  const leave = toward(below, crown);
  const land = toward(blend.centre, blend.radius);
  const pieces = [distance(leave, land), distance(land, blend.touch)];
  if (leave[0] < 5 || land[0] <= leave[0] || land[0] >= blend.touch[0] || Math.min(...pieces) < LEAST_PIECE) {
    return undefined;
  }
  const level = run.radius !== Number.POSITIVE_INFINITY;
  const end: Point = [run.tip[0] + BEYOND, run.tip[1] - BEYOND * Math.tan(run.slope)];
  return {
    crownEnd: leave[0],
    chain: [
      arc([0, thickness], leave, below, -1),
      arc(leave, land, centre, -1),
      arc(land, blend.touch, blend.centre, 1),
      ...(level
        ? [arc(blend.touch, run.tip, [run.tip[0], run.tip[1] + run.radius], 1), line(run.tip, end)]
        : [line(blend.touch, end)]),
    ],
  };
}
