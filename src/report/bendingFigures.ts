import type { Curves } from '../../models/curves/curves.ts';
import type { Slice } from '../../models/surface/slice.ts';
import { slicesAlong, stiffnessBetween } from '../../models/surface/slicesAlong.ts';
import type { Design } from '../design/design.ts';
import { bendingStiffness } from '../trade/bendingStiffness.ts';
import { equivalentBrace } from '../trade/equivalentBrace.ts';
import { shearModulus } from '../trade/shearModulus.ts';
import { midStiffness } from './midStiffness.ts';

/** The force in the middle under which a bridge's deflection is said, N. */
export const TEST_FORCE = 100;

/** The bending stiffness at one place along the bridge. */
export interface StiffnessAt {
  readonly x: number;
  readonly stiffnessNm2: number;
}

/** How stiff a bridge is along its length, its pin holes reamed. */
export interface BendingFigures {
  /** From tip to tip, rising x; two at nearly one place where a cut begins or ends. */
  readonly along: readonly StiffnessAt[];
  /** At x = 0, N·m². */
  readonly midNm2: number;
  /** Height of the bar of the design's width and stiffness that is as stiff as the middle, mm. */
  readonly braceMm: number;
  /** Under `TEST_FORCE` in the middle, on supports under both tips, mm (W6). */
  readonly deflectionMm: number;
  /** From end to end of the middle block by a couple of 1 N·m, degrees: an estimate. */
  readonly twistDegPerNm: number;
}

export function bendingFigures(curves: Curves, { timber, top }: Design): BendingFigures {
  const slices = slicesAlong(curves, 'reamed');
  const midNm2 = midStiffness(curves, timber.stiffness);
  const [x0, x1] = [(slices[0] as Slice).x, (slices[slices.length - 1] as Slice).x];
  const half = (x1 - x0) / 2;
  // mm³ of ∫M·m/I dx under a unit force: the moment is half of it times the way from the nearer support
  const bent = along(
    slices,
    ({ secondMm4 }) => secondMm4,
    (x) => ((half - Math.abs(x)) / 2) ** 2,
  );
  // toward the tips a section dwindles to nothing
  const block = slices.filter(({ x }) => Math.abs(x) <= top.block / 2);
  const twisted = along(
    block,
    ({ torsionMm4 }) => torsionMm4,
    () => 1,
  );
  return {
    along: slices.map(({ x, secondMm4 }) => ({
      x,
      stiffnessNm2: bendingStiffness(secondMm4, timber.stiffness),
    })),
    midNm2,
    braceMm: equivalentBrace(midNm2, timber.braceWidth, timber.braceStiffness),
    deflectionMm: (TEST_FORCE * bent) / (timber.stiffness * 1e3),
    twistDegPerNm: ((1000 * twisted) / (shearModulus(timber.stiffness) * 1e3)) * (180 / Math.PI),
  };
}

/** ∫ f/I dx by Simpson's rule between sections. */
function along(slices: readonly Slice[], second: (one: Slice) => number, f: (x: number) => number): number {
  return slices.slice(1).reduce((sum, b, i) => {
    const a = slices[i] as Slice;
    const middle = stiffnessBetween(second(a), second(b), 0.5);
    const x = (a.x + b.x) / 2;
    return sum + ((b.x - a.x) / 6) * (f(a.x) / second(a) + (4 * f(x)) / middle + f(b.x) / second(b));
  }, 0);
}
