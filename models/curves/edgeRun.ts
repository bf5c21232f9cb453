import { type Problem, tooLittle, tooMuch, unfitting } from '../../src/design/problem.ts';
import { arc, type Chain, LEAST_PIECE, line, type Point, type Segment } from './segment.ts';

/** How half of a front or back edge goes, from the centre line (x = 0) to the tip (x = halfLength), mm. */
export interface EdgeRun {
  readonly form: 'straight' | 'sweep' | 'bow' | 'taper';
  /** y on the centre line. */
  readonly middle: number;
  /** y at the wing. */
  readonly wing: number;
  readonly halfLength: number;
  /** Half the run that keeps its full depth. */
  readonly fullHalf: number;
  /** Length in x of a double sweep. */
  readonly sweep: number;
  readonly knee: number;
}

/** Most that an edge may go front to back for each millimetre along the bridge. */
const STEEPEST = 0.9;

/** Half an edge as tangent lines and arcs walking toward +x, or why it doesn't fit. */
export function edgeRun(run: EdgeRun): Chain | Problem {
  const { form, middle, wing, halfLength } = run;
  const rise = wing - middle;
  if (form === 'straight' || Math.abs(rise) < 1e-9) return [line([0, middle], [halfLength, middle])];
  const turn = rise > 0 ? 1 : -1;
  if (form === 'bow') {
    if (Math.abs(rise) > STEEPEST * halfLength) {
      const least = (2 * Math.abs(rise)) / STEEPEST;
      const remedy = 'Lengthen the bridge or take less belly.';
      return tooLittle('footprint.length', 2 * halfLength, least, 'for one bow this deep', remedy);
    }
    const radius = (halfLength ** 2 + rise ** 2) / (2 * Math.abs(rise));
    return [arc([0, middle], [halfLength, wing], [0, middle + turn * radius], turn)];
  }
  return form === 'sweep' ? doubleSweep(run, rise, turn) : taper(run, rise, turn);
}

/** Two equal arcs, each tangent to the other and to the straight it leaves: R = (Δx² + Δy²) / (4 Δy). */
function doubleSweep(run: EdgeRun, rise: number, turn: 1 | -1): Chain | Problem {
  const { middle, wing, halfLength, fullHalf, sweep } = run;
  const x0 = 2 * fullHalf < LEAST_PIECE ? 0 : fullHalf;
  const x1 = x0 + sweep;
  const fits = (length: number) => x0 + length <= halfLength - 0.5 && Math.abs(rise) <= STEEPEST * length;
  if (!fits(sweep)) {
    const why = 'for this belly, beside this full-depth run';
    const remedy = 'Change the sweep, the belly, the full-depth run or the length of the bridge.';
    return unfitting('footprint.sweepLength', sweep, fits, why, remedy);
  }
  const radius = (sweep ** 2 + rise ** 2) / (4 * Math.abs(rise));
  const halfway: Point = [(x0 + x1) / 2, (middle + wing) / 2];
  const out: Segment[] = x0 > 0 ? [line([0, middle], [x0, middle])] : [];
  out.push(
    arc([x0, middle], halfway, [x0, middle + turn * radius], turn),
    arc(halfway, [x1, wing], [x1, wing - turn * radius], turn === 1 ? -1 : 1),
    line([x1, wing], [halfLength, wing]),
  );
  return out;
}

/** A straight from the full-depth run to the tip; its knee rounded: tangent length t = R·tan(φ/2). */
function taper(run: EdgeRun, rise: number, turn: 1 | -1): Chain | Problem {
  const { middle, wing, halfLength, fullHalf, knee } = run;
  const dx = halfLength - fullHalf;
  const leastRun = Math.max(4, Math.abs(rise));
  if (dx < leastRun) {
    const most = 2 * (halfLength - leastRun);
    const why = 'with this length and belly';
    return tooMuch('footprint.fullDepthLength', 2 * fullHalf, most, why, 'Shorten the full-depth run.');
  }
  const slope = Math.hypot(dx, rise);
  const bend = Math.atan2(Math.abs(rise), dx);
  const room = Math.min(fullHalf - LEAST_PIECE, slope - 1);
  const fits = (radius: number) => radius * Math.tan(bend / 2) <= room && radius * bend >= LEAST_PIECE;
  if (!fits(knee)) {
    const remedy = 'Change the knee, the full-depth run or the belly.';
    return unfitting('footprint.knee', knee, fits, 'with this full-depth run and belly', remedy);
  }
  const t = knee * Math.tan(bend / 2);
  const start: Point = [fullHalf - t, middle];
  const end: Point = [fullHalf + (t * dx) / slope, middle + (t * rise) / slope];
  return [
    line([0, middle], start),
    arc(start, end, [start[0], middle + turn * knee], turn),
    line(end, [halfLength, wing]),
  ];
}
