import type { Curves } from '../curves/curves.ts';
import { planOf } from '../curves/rim/plan.ts';
import { rimOf } from '../curves/rim/rimOf.ts';
import { topOf } from '../curves/rim/top.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import type { Scope } from '../kernel/scope.ts';
import { sew } from '../kernel/sew.ts';
import { bandFaces } from './bandFaces.ts';
import { glueFace } from './glueFace.ts';
import { rimStretches } from './rimStretches.ts';
import { topFaces } from './topFaces.ts';
import { wallFaces } from './wallFaces.ts';

/**
 * The body between glue face, walls and top, with its edge, before anything is cut into it. Every face is made between
 * its own boundaries and all are sewn: nothing is cut, so nothing can be cut wrongly.
 */
export function body(kernel: Kernel, scope: Scope, { outline, profile, underside, edge }: Curves): Shape {
  const plan = planOf(outline);
  const top = topOf(profile);
  const rim = rimOf(edge, plan, top);
  const stretches = rimStretches(rim, plan, top);
  return sew(kernel, scope, [
    glueFace(kernel, scope, plan, underside),
    ...wallFaces(kernel, scope, plan, underside, stretches),
    ...topFaces(kernel, scope, top, stretches),
    ...bandFaces(kernel, scope, rim, stretches),
  ]);
}
