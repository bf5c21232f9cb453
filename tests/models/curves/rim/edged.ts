import type { Edge, Profile } from '../../../../models/curves/curves.ts';
import { edgeOf } from '../../../../models/curves/rim/edgeOf.ts';
import { type Plan, planOf } from '../../../../models/curves/rim/plan.ts';
import type { EdgeCut } from '../../../../models/curves/rim/rim.ts';
import { type Top, topOf } from '../../../../models/curves/rim/top.ts';
import type { Chain } from '../../../../models/curves/segment.ts';

/** A top with its edge, and the height that is left over a place inside the outline, mm. */
export interface Edged {
  readonly plan: Plan;
  readonly top: Top;
  readonly edge: EdgeCut;
  left(x: number, y: number): number;
}

export function edged(outline: Chain, profile: Profile, asked: Edge): Edged {
  const [plan, top] = [planOf(outline), topOf(profile)];
  const edge = edgeOf(asked, plan, top);
  if (!edge) throw new Error('the test asks for no edge');
  return {
    plan,
    top,
    edge,
    left: (x, y) => {
      const near = plan.nearest(x, y, edge.reach);
      return near ? edge.height(x, y, near) : top.height(x, 0);
    },
  };
}
