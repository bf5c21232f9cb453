import type { Design } from '../../src/design/design.ts';
import { DesignError, misfit, type Problem, roundForReading } from '../../src/design/problem.ts';
import { mirrorImage } from './chain.ts';
import type { Profile } from './curves.ts';
import { fretboardRadius } from './fretboard.ts';
import { joined } from './outline.ts';
import { meetCircles } from './roundCorner.ts';
import { arc, type Chain, distance, line, type Point, type Segment } from './segment.ts';

/** How far the profile runs on beyond the tips, mm: the cut must clear the wood. */
const BEYOND = 3;
/** Least height of the block's corner over the wing's run, mm: with less there is no step to blend. */
const LEAST_STEP = 0.3;

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
  const half = design.footprint.length / 2;
  const blockEnd = top.block / 2;
  if (blockEnd > half - 4) {
    throw new DesignError([
      misfit(
        'top.block',
        top.block,
        `at most ${roundForReading(2 * half - 8)} mm on this length`,
        'Shorten the middle block or lengthen the bridge.',
      ),
    ]);
  }
  if (blockEnd >= radius) {
    throw new DesignError([
      misfit(
        'top.crownRadius',
        radius,
        `more than half the middle block, ${roundForReading(blockEnd)} mm`,
        'Flatten the crown or shorten the block.',
      ),
    ]);
  }
  const corner: Point = [blockEnd, top.thickness - drop(radius, blockEnd)];
  const tip: Point = [half, tipFloor + top.tip];
  const step = corner[1] - (tip[1] + top.wingRise);
  if (step < LEAST_STEP) {
    throw new DesignError([
      misfit(
        'top.tip',
        top.tip,
        `at most ${roundForReading(top.tip + step - LEAST_STEP)} mm with this block, crown and wing rise`,
        'Make the tip thinner, the wing rise less, the block thicker or shorter, or the crown flatter.',
      ),
    ]);
  }
  const run = wingRun(top.wing, top.wingRise, tip, blockEnd);
  if ('code' in run) throw new DesignError([run]);
  const blend = blendArc(run, corner, step, top.blend);
  if ('code' in blend) throw new DesignError([blend]);
  const right = withShoulder(radius, top, corner, blend, run);
  if ('code' in right) throw new DesignError([right]);
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
  if (rise < 0.2 || rise > 0.9 * dx) {
    return misfit(
      'top.wingRise',
      rise,
      `0.2 to ${roundForReading(0.9 * dx)} mm for a hollow wing`,
      'A hollow wing rises toward the block: give it some rise, or make it straight.',
    );
  }
  return { slope: 0, radius: (dx * dx + rise * rise) / (2 * rise), tip };
}

interface Blend {
  readonly centre: Point;
  readonly radius: number;
  /** Where it touches the run. */
  readonly touch: Point;
}

function blendArc(run: Run, corner: Point, step: number, radius: number): Blend | Problem {
  const blend =
    run.radius === Number.POSITIVE_INFINITY ? onStraight(run, corner, radius) : onHollow(run, corner, radius);
  if (!blend || blend.centre[1] < corner[1] + 0.02 || blend.centre[0] <= corner[0]) {
    const allowed =
      run.radius <= radius
        ? `less than the hollow’s own radius, ${roundForReading(run.radius)} mm`
        : `at least ${roundForReading(step + 0.1)} mm, the height of the step`;
    return misfit(
      'top.blend',
      radius,
      allowed,
      'Change the blend, or the height of the step between block and wing.',
    );
  }
  const room = run.tip[0] - 1;
  if (blend.touch[0] > room) {
    return misfit(
      'top.blend',
      radius,
      `a blend that ends ${roundForReading(blend.touch[0] - room)} mm further in`,
      'Take a smaller blend, a lower step, a shorter block or a longer bridge.',
    );
  }
  return blend;
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

function withShoulder(
  crown: number,
  top: Design['top'],
  corner: Point,
  blend: Blend,
  run: Run,
): { readonly chain: Chain; readonly crownEnd: number } | Problem {
  const below: Point = [0, top.thickness - crown];
  const fit = 'Take a smaller shoulder, a smaller blend, a flatter crown or a higher step.';
  const crownFall = Math.asin(corner[0] / crown);
  const blendFall = Math.acos(Math.min(1, (blend.centre[1] - corner[1]) / blend.radius));
  if (blendFall < crownFall + 0.02) {
    return misfit(
      'top.blend',
      blend.radius,
      'a blend that falls more steeply from the block’s end than the crown does',
      fit,
    );
  }
  const centres = meetCircles(below, crown - top.shoulder, blend.centre, blend.radius + top.shoulder);
  const centre = centres.reduce<Point | undefined>(
    (best, c) => (!best || distance(c, corner) < distance(best, corner) ? c : best),
    undefined,
  );
  const toward = (from: Point, radius: number): Point | undefined => {
    if (!centre) return undefined;
    const l = distance(from, centre);
    return [from[0] + ((centre[0] - from[0]) * radius) / l, from[1] + ((centre[1] - from[1]) * radius) / l];
  };
  const leave = toward(below, crown);
  const land = toward(blend.centre, blend.radius);
  if (!centre || !leave || !land || leave[0] < 5 || land[0] > blend.touch[0] - 0.05 || land[0] <= leave[0]) {
    return misfit(
      'top.shoulder',
      top.shoulder,
      'a shoulder that leaves some of the crown and some of the blend',
      fit,
    );
  }
  const level = run.radius !== Number.POSITIVE_INFINITY;
  const end: Point = [run.tip[0] + BEYOND, run.tip[1] - BEYOND * Math.tan(run.slope)];
  return {
    crownEnd: leave[0],
    chain: [
      arc([0, top.thickness], leave, below, -1),
      arc(leave, land, centre, -1),
      arc(land, blend.touch, blend.centre, 1),
      ...(level
        ? [arc(blend.touch, run.tip, [run.tip[0], run.tip[1] + run.radius], 1), line(run.tip, end)]
        : [line(blend.touch, end)]),
    ],
  };
}
