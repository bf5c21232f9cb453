import { cast, createAssembly, setOC } from 'replicad';
import type { Kernel, Shape } from './kernel.ts';
import { KernelError } from './kernelError.ts';
import { scoped } from './scope.ts';
import { stepText } from './stepText.ts';

export type StepSchema = 'AP214' | 'AP242';

/** The kernel's numbers for the schemas of ISO 10303: AP214 IS is read by everything, AP242 is its successor. */
const SCHEMA = { AP214: 4, AP242: 5 } as const;

/**
 * A STEP file (ISO 10303-21) of one solid in millimetres, with `name` as its product name.
 *
 * @param written the time that stands in its header
 */
export function writeStep(
  kernel: Kernel,
  shape: Shape,
  name: string,
  schema: StepSchema,
  written = new Date(),
): Uint8Array {
  const { oc } = kernel;
  const path = '/part.step';
  // replicad works on one kernel at a time: say which, since another may have been loaded after this one
  setOC(oc);
  return scoped((scope) => {
    const session = scope.own(new oc.XSControl_WorkSession());
    const writer = scope.own(new oc.STEPCAFControl_Writer(session, false));
    writer.SetNameMode(true);
    writer.SetColorMode(false);
    oc.Interface_Static.SetCVal('xstep.cascade.unit', 'MM');
    oc.Interface_Static.SetCVal('write.step.unit', 'MM');
    oc.Interface_Static.SetIVal('write.step.schema', SCHEMA[schema]);
    const part = scope.own(cast(shape));
    const document = scope.own(createAssembly([{ shape: part, name }]));
    if (!writer.Perform(document.wrapped, path, scope.own(new oc.Message_ProgressRange()))) {
      throw new KernelError('STEP', 'the kernel could not write the solid');
    }
    const text = new TextDecoder().decode(oc.FS.readFile(path));
    oc.FS.unlink(path);
    return new TextEncoder().encode(stepText(text, { name, written }));
  });
}
