import Module, { type Manifold } from 'manifold-3d';
import type { Curves, Holes } from '../curves/curves.ts';
import type { PartMesh } from '../mesh/partMesh.ts';
import { bodyMesh } from './bodyMesh.ts';
import { channelMesh } from './channelMesh.ts';
import { type ClosedMesh, MeshBuilder } from './meshBuilder.ts';
import { pinMesh } from './pinMesh.ts';
import { shownMesh } from './shownMesh.ts';
import { slotMesh } from './slotMesh.ts';

/** The quick mesh of a bridge and what can be measured on it. */
export interface DraftResult {
  readonly mesh: PartMesh;
  readonly volumeMm3: number;
  /** [xMin, yMin, zMin, xMax, yMax, zMax] */
  readonly boxMm: readonly [number, number, number, number, number, number];
  /** Genus of the mesh: through holes of a part that is one piece. */
  readonly throughHoles: number;
}

/** Makes drafts with a mesh kernel of its own. */
export interface Drafter {
  /**
   * Meshes a bridge with every feature that the solid has.
   *
   * @param deviationMm how far the mesh may stray from the surfaces; its volume follows
   * @throws when the mesh kernel refuses: curves that were checked never make it
   */
  draft(curves: Curves, holes: Holes, deviationMm?: number): DraftResult;
  /** Memory that the mesh kernel holds; it only ever grows. */
  heapBytes(): number;
  /** Lets the mesh kernel go; no draft can be made after. */
  dispose(): void;
}

/**
 * Loads the mesh kernel.
 *
 * @param wasmUrl where its manifold.wasm is; without it, beside the package's own script
 */
export async function createDrafter(wasmUrl?: string): Promise<Drafter> {
  const kernel = await Module(wasmUrl === undefined ? undefined : { locateFile: () => wasmUrl });
  kernel.setup();
  return {
    draft(curves, holes, deviationMm = 0.02) {
      const owned: Manifold[] = [];
      const keep = (m: Manifold) => {
        owned.push(m);
        return m;
      };
      const solid = (mesh: ClosedMesh) =>
        keep(
          new kernel.Manifold(
            new kernel.Mesh({
              numProp: 6,
              vertProperties: mesh.vertices,
              triVerts: mesh.triangles,
              mergeFromVert: mesh.mergeFrom,
              mergeToVert: mesh.mergeTo,
            }),
          ),
        );
      try {
        const body = solid(bodyMesh(curves, deviationMm));
        const tools = toolMeshes(curves, holes, deviationMm).map(solid);
        const cut = keep(kernel.Manifold.union(tools));
        const part = keep(body.subtract(cut));
        const status = part.status();
        if (status !== 'NoError' || part.isEmpty()) throw new Error(`The draft could not be cut: ${status}.`);
        const { min, max } = part.boundingBox();
        return {
          mesh: shownMesh(part.getMesh()),
          volumeMm3: part.volume(),
          boxMm: [...min, ...max],
          throughHoles: part.genus(),
        };
      } finally {
        for (const m of owned) m.delete();
      }
    },
    heapBytes() {
      return 0;
    },
    dispose() {},
  };
}

/** Slot and pins stand clear of one another and make one tool; a channel opens into its pin and is one for itself. */
function toolMeshes(curves: Curves, holes: Holes, deviation: number): readonly ClosedMesh[] {
  const clear = new MeshBuilder(-1);
  slotMesh(clear, curves, deviation);
  for (const pin of curves.pins) pinMesh(clear, pin, holes, deviation);
  const channels = curves.channels.map((channel) => {
    const mesh = new MeshBuilder(-1);
    channelMesh(mesh, channel);
    return mesh.finish();
  });
  return [clear.finish(), ...channels];
}
