import type { Curves } from '../../../models/curves/curves.ts';
import { drawCurves } from '../../../models/curves/drawCurves.ts';
import type { Design } from '../../design/design.ts';
import { FIELDS } from '../../design/fields.ts';
import { type FollowedPath, followedPath } from '../../design/followed.ts';
import { DesignError, misfit, rangeOf } from '../../design/problem.ts';
import { type PlacedDesign, placeDesign } from '../../trade/fit/placeDesign.ts';
import { rounded } from '../../trade/fit/rounded.ts';
import { type AimOf, MEASURES } from './measures.ts';

/** A dimension that follows what the design aims at. */
export interface Aimed {
  readonly of: AimOf;
  readonly path: FollowedPath;
  /** In the aim's own unit. */
  readonly asked: number;
  readonly reached: number;
  /** Of the dimension, mm. */
  readonly value: number;
}

/** A design that meets its aim, drawn. */
export interface AimedDesign extends PlacedDesign {
  readonly curves: Curves;
  readonly aimed: Aimed;
}

interface Trial extends PlacedDesign {
  readonly curves: Curves;
  readonly value: number;
  /** What it comes to, less what is asked. */
  readonly over: number;
}

/** How many values of the dimension's range are looked at when the usual one can't be drawn. */
const LOOKS = 24;
/** Steps toward the aim; four do where nothing is in the way. */
const MOST_STEPS = 40;
/** mm: what a dimension is moved by to see what it does, and how near to its end it is followed. */
const [NUDGE, NEAR] = [0.05, 0.002];

/**
 * The design with the dimension that follows changed until its aim is met: the solved numbers are placed and the curves
 * drawn for each trial, and the wood measured. From the usual value it goes by secants; where a value can't be drawn, half
 * way back to the last that could. Throws `DesignError` when no value of the dimension meets the aim, saying how near one
 * comes, or when none can be drawn.
 */
export function aimedDesign(read: Design): AimedDesign {
  const path = followedPath(read.aim);
  if (!path || read.aim.of === 'none') throw new Error('the design aims at nothing');
  const { of } = read.aim;
  const measure = MEASURES[of];
  const asked = read.aim[of];
  const { min, max } = rangeOf(path);
  const attempt = (value: number): Trial | undefined => {
    try {
      const placed = placeDesign(withValue(read, path, value));
      const curves = drawCurves(placed.design);
      return { ...placed, curves, value, over: measure.of(placed.design, curves) - asked };
    } catch (error) {
      if (error instanceof DesignError) return undefined;
      throw error;
    }
  };
  const met = (trial: Trial): AimedDesign => ({
    design: trial.design,
    fit: trial.fit,
    curves: trial.curves,
    aimed: { of, path, asked, reached: asked + trial.over, value: trial.value },
  });

  const usual = usualValue(path);
  let best = start(attempt, usual, min, max);
  if (!best) {
    // whatever stands in the way of a usual value stands in the way of all
    drawCurves(placeDesign(withValue(read, path, usual)).design);
    throw new Error(`${path} ${usual} can be drawn after all`);
  }
  let slope = slopeAt(attempt, best, min, max);
  // the nearest values below and above that could not be drawn
  let [below, above] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let step = 0; step < MOST_STEPS; step++) {
    if (Math.abs(best.over) <= measure.within) return met(best);
    if (slope === 0) break;
    // rounded as it is tried: a wall is known by the very number that failed
    const secant = rounded(Math.min(max, Math.max(min, best.value - best.over / slope)));
    const wall = secant > best.value ? above : below;
    const barred = Math.abs(secant - best.value) >= Math.abs(wall - best.value);
    const wanted = barred ? rounded((best.value + wall) / 2) : secant;
    if (Math.abs(wanted - best.value) < (barred ? NEAR : 1e-9)) break;
    const trial = attempt(wanted);
    if (!trial) {
      if (wanted > best.value) above = wanted;
      else below = wanted;
      continue;
    }
    slope = (trial.over - best.over) / (trial.value - best.value);
    best = trial;
  }
  if (Math.abs(best.over) <= measure.within) return met(best);
  throw outOfReach(of, path, asked, best);
}

/** The design with a dimension set. A thickness that follows is set, whatever solved it before. */
function withValue(design: Design, path: FollowedPath, value: number): Design {
  if (path === 'footprint.length') return { ...design, footprint: { ...design.footprint, length: value } };
  if (path === 'footprint.depthCentre')
    return { ...design, footprint: { ...design.footprint, depthCentre: value } };
  const key = path.slice('top.'.length);
  const by = path === 'top.thickness' ? { thicknessBy: 'set' as const } : {};
  return { ...design, top: { ...design.top, [key]: value, ...by } };
}

/** Where a dimension starts from, mm: its default, so that what was typed for it has no say. */
function usualValue(path: FollowedPath): number {
  const [group, key] = path.split('.') as ['top', 'tip'];
  return Number(FIELDS[group][key].default);
}

/** The usual value, or the nearest of the range's that can be drawn. */
function start(
  attempt: (value: number) => Trial | undefined,
  usual: number,
  min: number,
  max: number,
): Trial | undefined {
  const first = attempt(usual);
  if (first) return first;
  return Array.from({ length: LOOKS + 1 }, (_, i) => min + ((max - min) * i) / LOOKS)
    .sort((a, b) => Math.abs(a - usual) - Math.abs(b - usual))
    .reduce<Trial | undefined>((found, value) => found ?? attempt(value), undefined);
}

/** What a millimetre of the dimension adds; 0 where it does nothing. */
function slopeAt(attempt: (value: number) => Trial | undefined, at: Trial, min: number, max: number): number {
  for (const nudge of [NUDGE, -NUDGE, NUDGE / 10, -NUDGE / 10]) {
    const value = at.value + nudge;
    const trial = value < min || value > max ? undefined : attempt(value);
    if (trial) return (trial.over - at.over) / nudge;
  }
  return 0;
}

const ANOTHER = 'Let another dimension follow, or aim at something else.';

function outOfReach(of: AimOf, path: FollowedPath, asked: number, best: Trial): DesignError {
  const { unit } = MEASURES[of];
  // rounded to the side that can be met
  const round = best.over > 0 ? Math.ceil : Math.floor;
  const nearest = (round((asked + best.over) * 100) / 100).toFixed(2);
  const [group, key] = path.split('.') as ['top', 'tip'];
  const { label } = FIELDS[group][key];
  const allowed = `${best.over > 0 ? 'at least' : 'at most'} ${nearest} ${unit}, with “${label}” at ${best.value.toFixed(2)} mm`;
  return new DesignError([misfit(`aim.${of}`, asked, allowed, ANOTHER)]);
}
