import type { Curves } from '../curves/curves.ts';
import { type Chain, line, type Point } from '../curves/segment.ts';
import { slotFloor, slotToPart } from '../curves/slot.ts';
import { common } from '../kernel/booleans.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import type { Scope } from '../kernel/scope.ts';
import { face, prism } from '../kernel/shapes.ts';
import type { Vector } from '../kernel/vectors.ts';

/** How far the cutter stands out over the crown's top, along the slot's walls, mm. */
const OVER = 4;

/** What the saddle slot takes out: its plan swept along its walls, down to a flat floor or one that follows the crown. */
export function slotTool(kernel: Kernel, scope: Scope, { slot, profile }: Curves): Shape {
  const place = (u: number, v: number, w: number): Vector => slotToPart(slot, profile.thickness, u, v, w);
  const sweep = (from: Vector, to: Vector): Vector => [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const lowest = slotFloor(slot, slot.halfLength) - (slot.floorRadius === undefined ? 0 : 1);
  const straight = () =>
    prism(
      kernel,
      scope,
      face(kernel, scope, slot.plan, ([u, v]) => place(u, v, lowest)),
      sweep(place(0, 0, lowest), place(0, 0, OVER)),
    );
  if (slot.floorRadius === undefined) return straight();

  // the long section of the slot, over its arched floor, swept across; wider than a slot whose ends are then rounded
  const end = slot.halfLength + (slot.roundEnds ? 1 : 0);
  const half = slot.width / 2 + (slot.roundEnds ? 1 : 0);
  const section = face(
    kernel,
    scope,
    archedSection(slot.floorRadius, slot.depth, end, slotFloor(slot, end)),
    ([u, w]) => place(u, -half, w),
  );
  const arched = prism(kernel, scope, section, sweep(place(0, -half, 0), place(0, half, 0)));
  return slot.roundEnds ? common(kernel, scope, straight(), arched) : arched;
}

function archedSection(radius: number, depth: number, end: number, floorAtEnd: number): Chain {
  const [left, right]: readonly [Point, Point] = [
    [-end, floorAtEnd],
    [end, floorAtEnd],
  ];
  return [
    { kind: 'arc', from: left, to: right, centre: [0, -depth - radius], radius, turn: -1 },
    line(right, [end, OVER]),
    line([end, OVER], [-end, OVER]),
    line([-end, OVER], left),
  ];
}
