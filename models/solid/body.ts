import type { Curves } from '../curves/curves.ts';
import { type Chain, line, type Point } from '../curves/segment.ts';
import { undersideHeight } from '../curves/underside.ts';
import { cut } from '../kernel/booleans.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import type { Scope } from '../kernel/scope.ts';
import { domePatch, face, prism } from '../kernel/shapes.ts';

/** How far cutters stand out beyond the wood, mm. */
const CLEAR = 3;

/** The body: the outline raised, with everything over the long profile and under the glue face cut off in one go. */
export function body(kernel: Kernel, scope: Scope, curves: Curves): Shape {
  const ys = curves.outline.flatMap((s) => [s.from[1], s.to[1]]);
  const xs = curves.outline.flatMap((s) => [s.from[0], s.to[0]]);
  const reach = { x: Math.max(...xs.map(Math.abs)) + CLEAR, y: Math.max(...ys.map(Math.abs)) + CLEAR };
  const flat = curves.underside.shape === 'flat';
  const low = flat ? 0 : undersideHeight(curves.underside, reach.x, reach.y) - 1;
  const high = curves.profile.thickness + 1;
  const blank = prism(
    kernel,
    scope,
    face(kernel, scope, curves.outline, ([x, y]) => [x, y, low]),
    [0, 0, high - low],
  );
  const tools = [aboveProfile(kernel, scope, curves, reach.y)];
  if (!flat) tools.push(belowGlueFace(kernel, scope, curves, reach, low - 1));
  return cut(kernel, scope, blank, tools);
}

function aboveProfile(kernel: Kernel, scope: Scope, { profile }: Curves, halfDepth: number): Shape {
  const first = profile.chain[0]?.from as Point;
  const last = profile.chain[profile.chain.length - 1]?.to as Point;
  const lid = profile.thickness + CLEAR;
  const loop: Chain = [
    ...profile.chain,
    line(last, [last[0], lid]),
    line([last[0], lid], [first[0], lid]),
    line([first[0], lid], first),
  ];
  const end = face(kernel, scope, loop, ([x, z]) => [x, -halfDepth, z]);
  return prism(kernel, scope, end, [0, 2 * halfDepth, 0]);
}

function belowGlueFace(
  kernel: Kernel,
  scope: Scope,
  { underside }: Curves,
  reach: { readonly x: number; readonly y: number },
  low: number,
): Shape {
  if (underside.shape === 'sphere') {
    return domePatch(kernel, scope, underside.radius, reach.x, reach.y, -low);
  }
  const z = undersideHeight(underside, reach.x, 0);
  const radius = underside.shape === 'cylinder' ? underside.radius : Number.POSITIVE_INFINITY;
  const loop: Chain = [
    {
      kind: 'arc',
      from: [reach.x, z],
      to: [-reach.x, z],
      centre: [0, -radius],
      radius,
      turn: 1,
    },
    line([-reach.x, z], [-reach.x, low]),
    line([-reach.x, low], [reach.x, low]),
    line([reach.x, low], [reach.x, z]),
  ];
  const end = face(kernel, scope, loop, ([x, height]) => [x, -reach.y, height]);
  return prism(kernel, scope, end, [0, 2 * reach.y, 0]);
}
