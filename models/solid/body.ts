import type { Curves } from '../curves/curves.ts';
import { curvesBox } from '../curves/curvesBox.ts';
import { type Chain, line, type Point } from '../curves/segment.ts';
import { undersideHeight } from '../curves/underside.ts';
import { cut } from '../kernel/booleans.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import { KernelError } from '../kernel/kernelError.ts';
import { boxOf } from '../kernel/measure.ts';
import type { Scope } from '../kernel/scope.ts';
import { domePatch, face, prism } from '../kernel/shapes.ts';

/** How far cutters stand out beyond the wood, mm. */
const CLEAR = 3;

/**
 * How much further the cutters stand out toward the nut than toward the tail, mm, one try after another. With cutters
 * symmetric to the blank the kernel now and then takes a cut-off for wood and keeps it; another length puts it right.
 */
const UNEVEN = [1.37, 2.71, 4.39, 7.13, 11.17] as const;

/** How near the body's box must come to the curves', mm. */
const NEAR = 0.01;

/** The body: the outline raised, with everything over the long profile and under the glue face cut off in one go. */
export function body(kernel: Kernel, scope: Scope, curves: Curves): Shape {
  const expected = curvesBox(curves);
  for (const uneven of UNEVEN) {
    const made = cutBody(kernel, scope, curves, uneven);
    const box = boxOf(kernel, made);
    if (box.every((b, i) => Math.abs(b - (expected[i] as number)) < NEAR)) return made;
  }
  throw new KernelError('body', 'the kernel keeps wood that was cut off');
}

function cutBody(kernel: Kernel, scope: Scope, curves: Curves, uneven: number): Shape {
  const [x0, y0, , x1, y1] = curvesBox(curves);
  const reach: Reach = { x: Math.max(-x0, x1) + CLEAR, back: y0 - CLEAR, front: y1 + CLEAR + uneven };
  const flat = curves.underside.shape === 'flat';
  const low = flat ? 0 : undersideHeight(curves.underside, reach.x, Math.max(-reach.back, reach.front)) - 1;
  const high = curves.profile.thickness + 1;
  const blank = prism(
    kernel,
    scope,
    face(kernel, scope, curves.outline, ([x, y]) => [x, y, low]),
    [0, 0, high - low],
  );
  const tools = [aboveProfile(kernel, scope, curves, reach)];
  if (!flat) tools.push(belowGlueFace(kernel, scope, curves, reach, low - 1));
  return cut(kernel, scope, blank, tools);
}

/** Half the cutters' length in x, and from where to where they go in y, mm. */
interface Reach {
  readonly x: number;
  readonly back: number;
  readonly front: number;
}

function aboveProfile(kernel: Kernel, scope: Scope, { profile }: Curves, reach: Reach): Shape {
  const first = profile.chain[0]?.from as Point;
  const last = profile.chain[profile.chain.length - 1]?.to as Point;
  const lid = profile.thickness + CLEAR;
  const loop: Chain = [
    ...profile.chain,
    line(last, [last[0], lid]),
    line([last[0], lid], [first[0], lid]),
    line([first[0], lid], first),
  ];
  const end = face(kernel, scope, loop, ([x, z]) => [x, reach.back, z]);
  return prism(kernel, scope, end, [0, reach.front - reach.back, 0]);
}

function belowGlueFace(
  kernel: Kernel,
  scope: Scope,
  { underside }: Curves,
  reach: Reach,
  low: number,
): Shape {
  if (underside.shape === 'sphere') {
    return domePatch(kernel, scope, underside.radius, reach.x, Math.max(-reach.back, reach.front), -low);
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
  const end = face(kernel, scope, loop, ([x, height]) => [x, reach.back, height]);
  return prism(kernel, scope, end, [0, reach.front - reach.back, 0]);
}
