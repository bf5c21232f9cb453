import { SEAM } from './fit.ts';
import type { Face, Kernel, Shape } from './kernel.ts';
import type { Scope } from './scope.ts';

/** The solid that faces enclose, wherever each looks. Throws when they leave a gap. */
export function sew(kernel: Kernel, scope: Scope, faces: readonly Face[]): Shape {
  const { oc } = kernel;
  const sewing = scope.own(new oc.BRepBuilderAPI_Sewing(SEAM, true, true, true, false));
  for (const face of faces) sewing.Add(face);
  sewing.Perform(scope.own(new oc.Message_ProgressRange()));
  const open = sewing.NbFreeEdges();
  if (open > 0) throw new Error(`the faces leave ${open} seams open`);
  const shell = scope.own(sewing.SewedShape());
  const solidIn = (outward: Shape) => {
    const made = scope.own(new oc.BRepBuilderAPI_MakeSolid(scope.own(oc.TopoDS.Shell(outward))));
    return scope.own(made.Solid());
  };
  const solid = solidIn(shell);
  oc.BRepLib.OrientClosedSolid(solid);
  // a shell that looks inward is mended by a mark on the solid, which not every reader heeds: turn the shell itself
  return solid.Orientation() === 'TopAbs_FORWARD' ? solid : solidIn(scope.own(shell.Reversed()));
}
