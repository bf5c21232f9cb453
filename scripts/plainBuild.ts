import type { Curves } from '../models/curves/curves.ts';
import { curvesBox } from '../models/curves/curvesBox.ts';
import { topOf } from '../models/curves/rim/top.ts';
import { type Chain, line, type Point } from '../models/curves/segment.ts';
import { cut } from '../models/kernel/booleans.ts';
import type { Kernel, Shape } from '../models/kernel/kernel.ts';
import { type Scope, scoped } from '../models/kernel/scope.ts';
import { face, prism } from '../models/kernel/shapes.ts';
import { dome } from '../models/kernel/surfaces.ts';
import { channelTool } from '../models/solid/channelTool.ts';
import { pinTool } from '../models/solid/pinTool.ts';
import { slotTool } from '../models/solid/slotTool.ts';
import { kernelsOwnEdge } from './kernelsOwnEdge.ts';

/** How far cutters stand out beyond the wood, mm. */
const CLEAR = 4.37;

/**
 * The same part as anyone would first build it: the outline raised, then one cut after another (glue face, crown, each
 * wing, slot, each pin and channel, reamed), and the kernel's own round-over last. What the bench compares with.
 */
export function plainBuild(kernel: Kernel, curves: Curves): void {
  scoped((scope) => {
    const tools = [
      belowGlueFace(kernel, scope, curves),
      ...aboveTop(kernel, scope, curves),
      slotTool(kernel, scope, curves),
      ...curves.pins.map((pin) => pinTool(kernel, scope, pin, 'reamed')),
      ...curves.channels.map((channel) => channelTool(kernel, scope, channel)),
    ];
    const shape = tools.reduce(
      (before, tool) => cut(kernel, scope, before, [tool]),
      blank(kernel, scope, curves),
    );
    if (curves.edge.kind === 'round') kernelsOwnEdge(kernel, scope, shape, curves, curves.edge.size);
  });
}

function blank(kernel: Kernel, scope: Scope, { outline, profile }: Curves): Shape {
  const base = face(kernel, scope, outline, ([x, y]) => [x, y, -CLEAR]);
  return prism(kernel, scope, base, [0, 0, profile.thickness + CLEAR + 1]);
}

/** A patch of the soundboard's sphere swept down. */
function belowGlueFace(kernel: Kernel, scope: Scope, curves: Curves): Shape {
  if (curves.underside.shape !== 'sphere') throw new Error('the bench measures a domed bridge');
  const { radius } = curves.underside;
  const [x0, y0, , x1, y1] = curvesBox(curves);
  const patch = new kernel.oc.BRepBuilderAPI_MakeFace(
    dome(kernel, scope, radius).handle,
    Math.PI + (x0 - CLEAR) / radius,
    Math.PI + (x1 + CLEAR) / radius,
    (y0 - CLEAR) / radius,
    (y1 + CLEAR) / radius,
    1e-6,
  );
  return prism(kernel, scope, scope.own(scope.own(patch).Face()), [0, 0, -3 * CLEAR]);
}

/** What stands over the crown, and over each wing. */
function aboveTop(kernel: Kernel, scope: Scope, curves: Curves): readonly Shape[] {
  const [, y0, , , y1] = curvesBox(curves);
  const { profile } = curves;
  const lid = profile.thickness + CLEAR;
  const ends = [-profile.crownEnd, profile.crownEnd];
  const parts: Chain[] = [[], [], []];
  for (const piece of topOf(profile).pieces) {
    const middle = (piece.from[0] + piece.to[0]) / 2;
    const part = ends.filter((x) => x < middle).length;
    parts[part] = [...(parts[part] as Chain), piece];
  }
  return parts.map((chain) => {
    const [first, last] = [chain[0]?.from as Point, chain[chain.length - 1]?.to as Point];
    const loop: Chain = [
      ...chain,
      line(last, [last[0], lid]),
      line([last[0], lid], [first[0], lid]),
      line([first[0], lid], first),
    ];
    const end = face(kernel, scope, loop, ([x, z]) => [x, y0 - CLEAR, z]);
    return prism(kernel, scope, end, [0, y1 - y0 + 3 * CLEAR, 0]);
  });
}
