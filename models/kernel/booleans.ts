import type { BRepAlgoAPI_Common, BRepAlgoAPI_Cut } from 'replicad-opencascadejs';
import type { Kernel, Shape } from './kernel.ts';
import type { Scope } from './scope.ts';

/**
 * How near two faces or edges count as one, mm. Without it cuts through crown and dome lose a hole, or all of them,
 * while the kernel's own check still says valid.
 */
const FUZZY = 1e-4;

/** Takes all `tools` out of `from` in one go. */
export function cut(
  kernel: Kernel,
  scope: Scope,
  from: Shape,
  tools: readonly Shape[],
  fuzzy = FUZZY,
): Shape {
  return run(kernel, scope, scope.own(new kernel.oc.BRepAlgoAPI_Cut()), [from], tools, fuzzy);
}

/** What two solids share. */
export function common(kernel: Kernel, scope: Scope, a: Shape, b: Shape): Shape {
  return run(kernel, scope, scope.own(new kernel.oc.BRepAlgoAPI_Common()), [a], [b], FUZZY);
}

function run(
  kernel: Kernel,
  scope: Scope,
  operation: BRepAlgoAPI_Cut | BRepAlgoAPI_Common,
  args: readonly Shape[],
  tools: readonly Shape[],
  fuzzy: number,
): Shape {
  operation.SetArguments(list(kernel, scope, args));
  operation.SetTools(list(kernel, scope, tools));
  operation.SetRunParallel(kernel.threads);
  operation.SetFuzzyValue(fuzzy);
  operation.SetToFillHistory(false);
  try {
    operation.Build(scope.own(new kernel.oc.Message_ProgressRange()));
    if (operation.HasErrors()) throw new Error('the kernel could not combine the shapes');
    return scope.own(operation.Shape());
  } finally {
    // without it every operation keeps some megabytes for ever
    operation.Clear();
  }
}

function list(kernel: Kernel, scope: Scope, shapes: readonly Shape[]) {
  const out = scope.own(new kernel.oc.NCollection_List_TopoDS_Shape());
  for (const shape of shapes) scope.own(out.Append(shape));
  return out;
}
