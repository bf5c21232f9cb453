import type { TopoDS_Edge } from 'replicad-opencascadejs';
import { type Chain, line, type Point, pointAt } from '../curves/segment.ts';
import type { Face, Kernel, Shape } from './kernel.ts';
import type { Scope } from './scope.ts';
import type { Vector } from './vectors.ts';

/** Places a point of a plane drawing in space; must keep lengths and angles. */
export type Placement = (p: Point) => Vector;

/** A flat face bounded by a closed chain: lines stay lines, arcs stay arcs. */
export function face(kernel: Kernel, scope: Scope, loop: Chain, place: Placement): Face {
  const { oc } = kernel;
  const wire = scope.own(new oc.BRepBuilderAPI_MakeWire());
  for (const s of loop) {
    const ends = [s.from, s.to].map((p) => point(kernel, scope, place(p)));
    const [a, b] = ends as [(typeof ends)[0], (typeof ends)[0]];
    let edge: TopoDS_Edge;
    if (s.kind === 'line') edge = scope.own(scope.own(new oc.BRepBuilderAPI_MakeEdge(a, b)).Edge());
    else {
      const middle = point(kernel, scope, place(pointAt(s, 0.5)));
      const curve = scope.own(scope.own(new oc.GC_MakeArcOfCircle(a, middle, b)).Value());
      edge = scope.own(scope.own(new oc.BRepBuilderAPI_MakeEdge(curve)).Edge());
    }
    wire.Add(edge);
  }
  return scope.own(scope.own(new oc.BRepBuilderAPI_MakeFace(scope.own(wire.Wire()), true)).Face());
}

/** The closed chain of straight lines through points. */
export function closedPath(points: readonly Point[]): Chain {
  return points.map((p, i) => line(p, points[(i + 1) % points.length] as Point));
}

/** A face swept along a vector, mm. */
export function prism(kernel: Kernel, scope: Scope, base: Shape, along: Vector): Shape {
  const { oc } = kernel;
  const vector = scope.own(new oc.gp_Vec(...along));
  return scope.own(scope.own(new oc.BRepPrimAPI_MakePrism(base, vector, false, true)).Shape());
}

/** A face turned once round the vertical through (x, y). */
export function revolve(kernel: Kernel, scope: Scope, base: Shape, [x, y]: Point): Shape {
  const { oc } = kernel;
  const up = scope.own(new oc.gp_Dir(0, 0, 1));
  const axis = scope.own(new oc.gp_Ax1(point(kernel, scope, [x, y, 0]), up));
  return scope.own(scope.own(new oc.BRepPrimAPI_MakeRevol(base, axis, false)).Shape());
}

export function point(kernel: Kernel, scope: Scope, [x, y, z]: Vector) {
  return scope.own(new kernel.oc.gp_Pnt(x, y, z));
}
