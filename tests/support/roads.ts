import type { Holes } from '../../models/curves/curves.ts';
import { createDrafter, type Drafter } from '../../models/draft/draftMesh.ts';
import type { Kernel } from '../../models/kernel/kernel.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { meshOf } from '../../models/kernel/mesh.ts';
import { type BridgeBuilder, createBridgeBuilder } from '../../models/solid/bridge.ts';
import { surfaceFigures } from '../../models/surface/figures.ts';
import { surfaceOf } from '../../models/surface/surface.ts';
import type { AcceptedDesign } from '../../src/design/acceptDesign.ts';
import { heightsOf } from './heightsOf.ts';

/** How far three independent roads to one part lie apart. */
export interface Roads {
  /** (draft − solid) / solid, the draft at a fine deviation */
  readonly draftOff: number;
  /** (surface − solid) / solid */
  readonly surfaceOff: number;
  /** Largest difference in height between solid and surface, away from walls, mm. */
  readonly heightOff: number;
  /** How many heights were compared. */
  readonly heights: number;
}

export interface Roadside {
  readonly kernel: Kernel;
  readonly builder: BridgeBuilder;
  readonly drafter: Drafter;
  compare(accepted: AcceptedDesign, holes: Holes): Promise<Roads>;
}

/** How finely the draft is made to be compared, mm. */
const FINE = 0.002;

/** Loads both kernels and compares solid, draft and surface of designs. */
export async function roadside(threads = false): Promise<Roadside> {
  const [kernel, drafter] = await Promise.all([loadKernel({ threads }), createDrafter()]);
  const builder = createBridgeBuilder(kernel, (curves, holes) => drafter.draft(curves, holes).volumeMm3);
  return {
    kernel,
    builder,
    drafter,
    async compare({ curves }, holes) {
      const { shape, figures } = await builder.build(curves, holes);
      const solid = figures.volumeMm3;
      const draft = drafter.draft(curves, holes, FINE).volumeMm3;
      const surface = surfaceFigures(curves, holes).volumeMm3;
      const heights = heightsOf(meshOf(kernel, shape, 0.002, 0.1));
      const wood = surfaceOf(curves, holes);
      let heightOff = 0;
      let compared = 0;
      const [x0, y0, , x1, y1] = wood.box;
      for (let x = x0 + 0.731; x < x1; x += 3.17) {
        for (let y = y0 + 0.533; y < y1; y += 2.29) {
          const here = flat(wood.columns, x, y);
          if (!here) continue;
          const there = heights(x, y);
          if (there.length !== here.length) continue;
          compared++;
          here.forEach((z, i) => {
            heightOff = Math.max(heightOff, Math.abs(z - (there[i] as number)));
          });
        }
      }
      return { draftOff: draft / solid - 1, surfaceOff: surface / solid - 1, heightOff, heights: compared };
    },
  };
}

/** Heights of the wood's faces over (x, y), unless a wall stands within 0.15 mm: there a mesh can't be compared. */
function flat(columns: ReturnType<typeof surfaceOf>['columns'], x: number, y: number): number[] | undefined {
  const at = columns(x, y).flat();
  if (at.length === 0) return undefined;
  for (const [dx, dy] of [
    [0.15, 0],
    [-0.15, 0],
    [0, 0.15],
    [0, -0.15],
  ] as const) {
    const near = columns(x + dx, y + dy).flat();
    if (near.length !== at.length) return undefined;
    if (near.some((z, i) => Math.abs(z - (at[i] as number)) > 0.4)) return undefined;
  }
  return at;
}
