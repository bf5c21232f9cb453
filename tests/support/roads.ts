import type { Curves, Holes } from '../../models/curves/curves.ts';
import { createDrafter, type Drafter } from '../../models/draft/draftMesh.ts';
import type { Kernel } from '../../models/kernel/kernel.ts';
import { loadKernel } from '../../models/kernel/loadKernel.ts';
import { meshOf } from '../../models/kernel/mesh.ts';
import { type BridgeBuilder, createBridgeBuilder } from '../../models/solid/bridge.ts';
import { surfaceFigures } from '../../models/surface/figures.ts';
import { surfaceOf } from '../../models/surface/surface.ts';
import type { AcceptedDesign } from '../../src/design/acceptDesign.ts';
import { heightsOf } from './heightsOf.ts';

/**
 * How far the three roads to one part lie apart. Draft and solid share nothing but the curves, not even how the edge
 * runs (`models/draft/edgeWall.ts`). Surface and solid share the top and the rim of `models/curves/rim`: what is wrong
 * there is wrong in both, and shows against the draft, the closed forms and the kernel's own fillet.
 */
export interface Roads {
  /** (draft − solid) / solid, the draft at a fine deviation */
  readonly draftOff: number;
  /** (surface − solid) / solid */
  readonly surfaceOff: number;
  /** Largest difference in height between surface and solid, away from walls, mm. */
  readonly heightOff: number;
  /** The same between draft and solid. */
  readonly draftHeightOff: number;
  /** How many heights were compared. */
  readonly heights: number;
}

/**
 * How far draft and solid may lie apart in height, mm. Where a wide chamfer turns a corner of the outline and a bend of
 * the top at once, their two programs for it stand up to 0.018 mm apart (measured: one of 60 random designs, 3.9 mm round
 * R 7 over a shoulder of R 5), and no nearer in a finer draft.
 */
export function draftHeightLimit({ edge }: Curves): number {
  return edge.kind === 'chamfer' ? 0.03 : 0.01;
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
      const draft = drafter.draft(curves, holes, FINE);
      const surface = surfaceFigures(curves, holes).volumeMm3;
      const [solidHeights, draftHeights] = [
        heightsOf(meshOf(kernel, shape, 0.002, 0.1)),
        heightsOf(draft.mesh),
      ];
      const wood = surfaceOf(curves, holes);
      let [heightOff, draftHeightOff, heights] = [0, 0, 0];
      const [x0, y0, , x1, y1] = wood.box;
      for (let x = x0 + 0.731; x < x1; x += 3.17) {
        for (let y = y0 + 0.533; y < y1; y += 2.29) {
          const surfaces = flat(wood.columns, x, y);
          if (!surfaces) continue;
          const [solids, drafts] = [solidHeights(x, y), draftHeights(x, y)];
          // a vertical that meets a seam of a mesh crosses it twice
          if (solids.length !== surfaces.length || drafts.length !== surfaces.length) continue;
          heights++;
          heightOff = Math.max(heightOff, apart(surfaces, solids));
          draftHeightOff = Math.max(draftHeightOff, apart(drafts, solids));
        }
      }
      return {
        draftOff: draft.volumeMm3 / solid - 1,
        surfaceOff: surface / solid - 1,
        heightOff,
        draftHeightOff,
        heights,
      };
    },
  };
}

function apart(some: readonly number[], others: readonly number[]): number {
  return Math.max(...some.map((z, i) => Math.abs(z - (others[i] as number))));
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
