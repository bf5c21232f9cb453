import type { Curves } from '../../models/curves/curves.ts';
import { bendingAlong } from '../../models/surface/bendingAlong.ts';
import { deflection } from '../../models/surface/deflection.ts';
import { massG } from '../../models/surface/figures.ts';
import { type BridgePart, partsAlong } from '../../models/surface/partsAlong.ts';
import { twistingAlong } from '../../models/surface/twistingAlong.ts';
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

/** One of the lengths that a bridge is made of. */
export interface PartFigure {
  readonly name: 'leftWing' | 'block' | 'rightWing';
  /** Where it begins and ends, x in mm. */
  readonly from: number;
  readonly to: number;
  readonly massG: number;
  /** Least bending stiffness in it. */
  readonly leastNm2: number;
  /** Its share of the whole bridge's deflection. */
  readonly deflectionShare: number;
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
  /** How far the middle turns about the bridge's length against its tips by a couple of 1 N·m, degrees: an estimate. */
  readonly twistDegPerNm: number;
  /** From the left tip to the right one, seen from the front. */
  readonly parts: readonly PartFigure[];
}

export function bendingFigures(curves: Curves, { timber, top }: Design): BendingFigures {
  const bending = bendingAlong(curves, 'reamed');
  const midNm2 = midStiffness(curves, timber.stiffness);
  const { leftWing, block, rightWing } = partsAlong(curves, 'reamed', top.block);
  const part = (name: PartFigure['name'], of: BridgePart): PartFigure => ({
    name,
    from: of.fromMm,
    to: of.toMm,
    massG: massG(of.volumeMm3, timber.density),
    leastNm2: bendingStiffness(of.leastSecondMm4, timber.stiffness),
    deflectionShare: of.flexShare,
  });
  return {
    along: bending.stations.map(({ x, secondMm4 }) => ({
      x,
      stiffnessNm2: bendingStiffness(secondMm4, timber.stiffness),
    })),
    midNm2,
    braceMm: equivalentBrace(midNm2, timber.braceWidth, timber.braceStiffness),
    deflectionMm: deflection(bending, timber.stiffness, TEST_FORCE),
    twistDegPerNm: twistingAlong(curves, 'reamed').middleToTipsDegGPaPerNm / shearModulus(timber.stiffness),
    parts: [part('leftWing', leftWing), part('block', block), part('rightWing', rightWing)],
  };
}
