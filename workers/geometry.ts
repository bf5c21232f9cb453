import type { Holes } from '../models/curves/curves.ts';
import type { Drafter } from '../models/draft/draftMesh.ts';
import { heapBytes, type Kernel } from '../models/kernel/kernel.ts';
import { writeStep } from '../models/kernel/step.ts';
import { writeStl } from '../models/kernel/stl.ts';
import { type BuiltSolid, createBridgeBuilder } from '../models/solid/bridge.ts';
import { acceptDesign } from '../src/design/acceptDesign.ts';
import type { DesignText } from '../src/design/design.ts';
import { initialDesign } from '../src/design/initial.ts';
import { DesignError } from '../src/design/problem.ts';
import { fileName } from '../src/files/fileName.ts';
import { DEVIATION_MM, type FileOptions, type Signal, type Solid, type WrittenFile } from './protocol.ts';
import { turn } from './turn.ts';

/** The exact solid of a design and its files. One call at a time: builds share the shapes kept between them. */
export interface Geometry {
  readonly threads: boolean;
  /** Bytes of memory the kernel holds; it only ever grows. */
  heapBytes(): number;
  /** Throws `DesignError` before the kernel is asked, or `KernelError` when it or the gate refuses. */
  solid(design: DesignText, holes: Holes, signal?: Signal): Promise<Solid>;
  /** Writes from the exact solid, built and gated for it. Throws as `solid` does. */
  file(design: DesignText, options: FileOptions): Promise<WrittenFile>;
  /** Builds once for nothing: first builds are three to five times slower. */
  warmUp(signal?: Signal): Promise<void>;
  /** Frees what is kept between builds. */
  dispose(): void;
}

/** Radians between neighbouring facets of an STL. */
const STL_ANGLE = 0.3;

const WANTED: Signal = { abandoned: false };

/** @param drafter another kernel, whose volume of the same part the gate compares */
export function createGeometry(kernel: Kernel, drafter: Drafter): Geometry {
  const builder = createBridgeBuilder(kernel, (curves, holes) => drafter.draft(curves, holes).volumeMm3);

  async function build(design: DesignText, holes: Holes, signal: Signal): Promise<BuiltSolid> {
    const { curves } = acceptDesign(design);
    return builder.build(curves, holes, async () => {
      await turn();
      if (signal.abandoned) throw new Error('The build was abandoned for a newer one.');
    });
  }

  return {
    threads: kernel.threads,
    heapBytes: () => heapBytes(kernel),
    async solid(design, holes, signal = WANTED) {
      const started = performance.now();
      const { mesh, figures } = await build(design, holes, signal);
      return { mesh, figures, ms: performance.now() - started, threads: kernel.threads };
    },
    async file(design, { format, holes, schema = 'AP214', deviationMm = DEVIATION_MM.usual, name, written }) {
      checkDeviation(deviationMm);
      const { shape } = await build(design, holes, WANTED);
      const product = acceptDesign(design).design.guitar.name;
      const bytes =
        format === 'step'
          ? writeStep(kernel, shape, product, schema, written)
          : writeStl(kernel, shape, product, deviationMm, STL_ANGLE);
      return { name: fileName(name ?? product, holes, { format, deviationMm }), bytes };
    },
    async warmUp(signal = WANTED) {
      await build(initialDesign(), 'reamed', signal);
    },
    dispose: () => builder.dispose(),
  };
}

function checkDeviation(deviation: number): void {
  const { least, most } = DEVIATION_MM;
  if (deviation >= least && deviation <= most) return;
  const allowed = `${least} to ${most} mm`;
  throw new DesignError([
    {
      code: 'out-of-range',
      path: '',
      value: `an STL deviation of ${deviation} mm`,
      allowed,
      remedy: `Keep it within ${allowed}.`,
    },
  ]);
}
