import type { Curves, Holes, Underside } from '../curves/curves.ts';
import { edgeOf } from '../curves/rim/edgeOf.ts';
import { type Plan, planOf } from '../curves/rim/plan.ts';
import type { EdgeCut } from '../curves/rim/rim.ts';
import { type Top, topOf } from '../curves/rim/top.ts';
import { undersideHeight } from '../curves/underside.ts';
import { channelCut } from './channelCut.ts';
import { clear } from './clear.ts';
import type { Body, Cut } from './cut.ts';
import { once } from './once.ts';
import { pinCut } from './pinCut.ts';
import { slotCut } from './slotCut.ts';

/** The body before any cut: between outline, underside and top, and what its edge takes off. */
export interface Blank {
  readonly plan: Plan;
  readonly top: Top;
  readonly underside: Underside;
  readonly edge: EdgeCut | undefined;
}

/** A bridge taken apart: its blank and the cuts in their order. */
export interface Parts extends Blank {
  readonly cuts: readonly Cut[];
  /** Of each cut, whether it keeps so far inside the outline that over all of it the top is uncut. */
  readonly inside: readonly boolean[];
}

/** The blank is the same however the holes are. */
export const blankOf = once((curves: Curves): Blank => {
  const plan = planOf(curves.outline);
  const top = topOf(curves.profile);
  return { plan, top, underside: curves.underside, edge: edgeOf(curves.edge, plan, top) };
});

/** The faces of the blank that cuts go into. */
export function facesOf({ top, underside }: Blank): Body {
  return { top: (x) => top.height(x, 0), under: (x, y) => undersideHeight(underside, x, y) };
}

export function partsOf(curves: Curves, holes: Holes): Parts {
  return both(curves)(holes);
}

const both = once((curves: Curves) => {
  const blank = blankOf(curves);
  const made: Partial<Record<Holes, Parts>> = {};
  return (holes: Holes): Parts => {
    made[holes] ??= taken(blank, curves, holes);
    return made[holes];
  };
});

function taken(blank: Blank, curves: Curves, holes: Holes): Parts {
  const cuts: readonly Cut[] = [
    slotCut(curves.slot, curves.profile),
    ...curves.pins.map((pin) => pinCut(pin, holes)),
    ...curves.channels.map((channel, i) => {
      const radii = curves.pins[i]?.outline[holes].map((p) => p[0]) ?? [];
      return channelCut(channel, radii);
    }),
  ];
  const reach = blank.edge?.reach ?? 0;
  return { ...blank, cuts, inside: cuts.map(({ box }) => clear(blank.plan, box, reach)) };
}
