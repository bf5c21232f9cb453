import type { Curves } from '../../models/curves/curves.ts';
import { drawCurves } from '../../models/curves/drawCurves.ts';
import { type Aimed, aimedDesign } from '../report/aim/aimedDesign.ts';
import { type Fit, placeDesign, type SolvablePath } from '../trade/fit/placeDesign.ts';
import { crossedLimits } from './crossedLimits.ts';
import { DesignError, type Problem } from './problem.ts';
import { type ReadDesign, readDesign } from './read.ts';

/** A design that can be made: its `design` has the solved numbers in place, and the dimension that follows its aim. */
export interface AcceptedDesign extends ReadDesign {
  readonly fit: Fit;
  readonly curves: Curves;
  /** Undefined when it aims at nothing. */
  readonly aimed: Aimed | undefined;
}

/**
 * The whole of validation: reads a design from JSON, solves what it leaves to the guitar and to its aim, and draws it.
 * Throws `DesignError`; the kernel is never asked.
 */
export function acceptDesign(json: unknown): AcceptedDesign {
  const { text, design: read } = readDesign(json);
  const crossed = crossedLimits(read);
  if (crossed.length > 0) throw new DesignError(crossed);
  if (read.aim.of !== 'none') return { text, ...aimedDesign(read) };
  const { design, fit } = placeDesign(read);
  try {
    return { text, design, fit, curves: drawCurves(design), aimed: undefined };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    throw new DesignError(error.problems.map((problem) => ofSolved(problem, fit)));
  }
}

/** What else a solved number follows from, beside being set by hand. */
const OTHERWISE: Readonly<Record<string, string>> = {
  'saddle.depth': 'want another wood under the slot or another showing, or set it by hand',
};

/** A number that nobody typed can't be typed anew: its problem says that it is solved, and how to have it otherwise. */
function ofSolved(problem: Problem, { solved }: Fit): Problem {
  if (solved[problem.path as SolvablePath]?.by !== 'solved') return problem;
  return {
    ...problem,
    value: `${problem.value} as solved`,
    remedy: `${problem.remedy} Or ${OTHERWISE[problem.path] ?? 'set it by hand'}.`,
  };
}
