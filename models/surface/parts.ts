import type { Curves, Holes, Underside } from '../curves/curves.ts';
import { edgeOf } from '../curves/rim/edgeOf.ts';
import { type Plan, planOf } from '../curves/rim/plan.ts';
import type { EdgeCut } from '../curves/rim/rim.ts';
import { type Top, topOf } from '../curves/rim/top.ts';
import { channelCut } from './channelCut.ts';
import type { Cut } from './cut.ts';
import { pinCut } from './pinCut.ts';
import { slotCut } from './slotCut.ts';

/** A bridge taken apart: the body between outline, underside and top, its edge, and the cuts in their order. */
export interface Parts {
  readonly plan: Plan;
  readonly top: Top;
  readonly underside: Underside;
  readonly edge: EdgeCut | undefined;
  readonly cuts: readonly Cut[];
}

export function partsOf(curves: Curves, holes: Holes): Parts {
  const plan = planOf(curves.outline);
  const top = topOf(curves.profile);
  return {
    plan,
    top,
    underside: curves.underside,
    edge: edgeOf(curves.edge, plan, top),
    cuts: [
      slotCut(curves.slot, curves.profile),
      ...curves.pins.map((pin) => pinCut(pin, holes)),
      ...curves.channels.map((channel, i) => {
        const radii = curves.pins[i]?.outline[holes].map((p) => p[0]) ?? [];
        return channelCut(channel, radii);
      }),
    ],
  };
}
