import type { Edge } from '../curves.ts';
import { chamfer } from './chamfer.ts';
import type { Plan } from './plan.ts';
import type { EdgeCut } from './rim.ts';
import { roundOver } from './roundOver.ts';
import type { Top } from './top.ts';

/** The edge that the design asks for, if any. */
export function edgeOf(edge: Edge, plan: Plan, top: Top): EdgeCut | undefined {
  if (edge.kind === 'none') return undefined;
  return edge.kind === 'round' ? roundOver(edge.size, plan, top) : chamfer(edge.size, plan, top);
}
