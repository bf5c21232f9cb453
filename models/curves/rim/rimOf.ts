import type { Edge } from '../curves.ts';
import { edgeOf } from './edgeOf.ts';
import type { Plan } from './plan.ts';
import type { Rim } from './rim.ts';
import { sharpRim } from './sharpRim.ts';
import type { Top } from './top.ts';

/** What runs round the top of a bridge: the edge that the design asks for, or the sharp one where it asks for none. */
export function rimOf(edge: Edge, plan: Plan, top: Top): Rim {
  return edgeOf(edge, plan, top) ?? sharpRim(plan, top);
}
