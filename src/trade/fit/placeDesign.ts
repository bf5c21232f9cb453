import { tooTight } from '../../../models/curves/profile.ts';
import type { Design } from '../../design/design.ts';
import { FIELDS } from '../../design/fields.ts';
import { DesignError, misfit, type Problem } from '../../design/problem.ts';
import type { EndHeights } from '../endHeights.ts';
import type { SolvedDepth } from '../slotDepthFor.ts';
import { depthFit } from './depthFit.ts';
import { type HeightFit, heightFit, showingIsSet } from './heightFit.ts';
import { type SlotFit, slotFit } from './slotFit.ts';
import { stringHeights } from './stringHeights.ts';
import { type TunedString, tunedStrings } from './tunedStrings.ts';

/** The numbers that can be solved from the guitar. */
export type SolvablePath =
  | 'saddle.angle'
  | 'saddle.setback'
  | 'saddle.depth'
  | 'saddle.showing'
  | 'top.thickness'
  | 'top.crownRadius';

/** One such number, mm or degrees. */
export interface SolvedNumber {
  /** What the guitar asks for, the other numbers being as they are. */
  readonly solved: number;
  /** What goes into the part: the same, or what was set by hand. */
  readonly used: number;
  readonly by: 'solved' | 'set';
}

/** How a bridge fits its guitar. */
export interface Fit {
  readonly strings: readonly TunedString[];
  readonly heights: readonly EndHeights[];
  readonly slot: SlotFit;
  readonly height: HeightFit;
  readonly depth: SolvedDepth;
  readonly solved: Readonly<Record<SolvablePath, SolvedNumber>>;
}

/** A design whose solved numbers stand in their fields, and how they came about. */
export interface PlacedDesign {
  readonly design: Design;
  readonly fit: Fit;
}

/**
 * Solves what the design leaves to the guitar: where the slot lies and how it leans, how deep it is, how thick the bridge
 * and how high the saddle. Throws `DesignError` when strings, action or a solved number can't be.
 */
export function placeDesign(design: Design): PlacedDesign {
  const strings = tunedStrings(design);
  const places = strings.map(({ x }) => x);
  const heights = stringHeights(design, places);
  const { slot, laid, height } = settled(design, strings, heights);
  const raised: Design = {
    ...withSaddle(laid, { showing: height.showing }),
    top: {
      ...laid.top,
      thickness: height.thickness,
      crownRadius: laid.top.crown === 'set' ? laid.top.crownRadius : height.fretboardRadius,
    },
  };
  const depth = depthFit(raised, places, height);
  const placed =
    design.saddle.depthBy === 'set'
      ? raised
      : withSaddle(raised, { depth: Math.max(depth.depth, LEAST_DEPTH) });

  const number = (solved: number, used: number, set: boolean): SolvedNumber => ({
    solved,
    used,
    by: set ? 'set' : 'solved',
  });
  const { saddle, top } = design;
  const solved: Fit['solved'] = {
    'saddle.angle': number(slot.solvedAngle, slot.line.angleDeg, saddle.angleBy === 'set'),
    'saddle.setback': number(slot.solvedSetback, slot.line.centreMm, saddle.setbackBy === 'set'),
    'saddle.depth': number(Math.max(depth.depth, LEAST_DEPTH), placed.saddle.depth, saddle.depthBy === 'set'),
    'saddle.showing': number(height.solvedShowing, height.showing, showingIsSet(design)),
    'top.thickness': number(height.solvedThickness, height.thickness, top.thicknessBy === 'set'),
    'top.crownRadius': number(height.fretboardRadius, placed.top.crownRadius, top.crown === 'set'),
  };
  // a fretboard may be flatter than any crown that is set; too round a one was refused above
  const { 'top.crownRadius': _, ...bounded } = solved;
  const beyond = Object.entries(bounded).flatMap(([path, one]) => outOfRange(path as Bounded, one));
  if (beyond.length > 0) throw new DesignError(beyond);
  return { design: placed, fit: { strings, heights, slot, height, depth, solved } };
}

/**
 * Slot and heights together: a leaning saddle carries its crown back by its height over the top, so that the slot lies
 * further forward; and where the slot lies moves the heights by a hair. Gone round until nothing moves.
 */
function settled(design: Design, strings: readonly TunedString[], heights: readonly EndHeights[]) {
  const places = strings.map(({ x }) => x);
  let leans: readonly number[] = places.map(() => 0);
  for (let round = 1; ; round++) {
    const slot = slotFit(design, strings, heights, leans);
    const laid = withSaddle(design, { angle: slot.line.angleDeg, setback: slot.line.centreMm });
    const tight = tooTight(laid);
    if (tight) throw new DesignError([tight]);
    const height = heightFit(laid, places, heights);
    const next = height.undersides.map((z) => leanOf(laid.saddle, z - height.thickness));
    const moved = Math.max(...next.map((lean, i) => Math.abs(lean - (leans[i] as number))));
    if (moved < 1e-9 || round === MOST_ROUNDS) return { slot, laid, height };
    leans = next;
  }
}

/** Two rounds settle an upright saddle, four any other: each leaves a hundredth of what the one before did. */
const MOST_ROUNDS = 6;

/** How far behind the slot's line on the top a crown stands that is this high over it, along the string, mm. */
function leanOf({ tilt, angle }: Design['saddle'], over: number): number {
  return (over * Math.tan((tilt * Math.PI) / 180)) / Math.cos((angle * Math.PI) / 180);
}

/** The shallowest slot that the table allows, mm: a saddle that hardly shows needs no less. */
const LEAST_DEPTH = FIELDS.saddle.depth.min;

function withSaddle(design: Design, saddle: Partial<Design['saddle']>): Design {
  return { ...design, saddle: { ...design.saddle, ...saddle } };
}

type Bounded = Exclude<SolvablePath, 'top.crownRadius'>;

const ASK: Readonly<Record<Bounded, string>> = {
  'saddle.angle':
    'Look at the strings, their cores, measured set-backs and the action, or set the angle by hand.',
  'saddle.setback': 'Look at the strings, their cores, measured set-backs and the action, or set it by hand.',
  'saddle.depth':
    'Make the bridge thicker, the saddle show less, want less wood under the slot, or set the depth by hand.',
  'saddle.showing': 'Change the thickness, the action or the height of the frets, or set it by hand.',
  'top.thickness':
    'Change what shows of the saddle, the action or the height of the frets, or set it by hand.',
};

function outOfRange(path: Bounded, { solved, by }: SolvedNumber): Problem[] {
  const [group, key] = path.split('.') as ['saddle', 'angle'];
  const { min, max, kind } = FIELDS[group][key];
  if (by === 'set' || (solved >= min && solved <= max)) return [];
  const unit = kind === 'angle' ? '°' : ' mm';
  return [misfit(path, `${solved}${unit} as solved`, `${min} to ${max}${unit}`, ASK[path])];
}
