import Module, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
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

/** Loads the mesh kernel, in Node or in a browser: it finds its .wasm beside itself, bundled or not. */
export async function createDrafter(): Promise<Drafter> {
  const loaded = await Module();
  loaded.setup();
  let kernel: ManifoldToplevel | undefined = loaded;
  const inUse = () => {
    if (!kernel) throw new Error('This drafter was disposed of.');
    return kernel;
  };
  return {
    draft: (curves, holes, deviationMm = DEVIATION) => draft(inUse(), curves, holes, deviationMm),
    heapBytes: () => heapBytes(inUse()),
    dispose: () => {
      kernel = undefined;
    },
  };
}

/** How far a draft strays from the surfaces unless more is asked, mm: unseen on a screen, and quick. */
const DEVIATION = 0.02;

function draft(kernel: ManifoldToplevel, curves: Curves, holes: Holes, deviation: number): DraftResult {
  const owned: Manifold[] = [];
  const keep = (made: Manifold) => {
    owned.push(made);
    return made;
  };
  try {
    const body = keep(solidOf(kernel, bodyMesh(curves, deviation)));
    for (const tool of toolMeshes(curves, holes, deviation)) keep(solidOf(kernel, tool));
    const cut = keep(kernel.Manifold.union(owned.slice(1)));
    const part = keep(body.subtract(cut));
    // cuts are made only now that something is asked of the part
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
    for (const one of owned) one.delete();
  }
}

function solidOf(kernel: ManifoldToplevel, mesh: ClosedMesh): Manifold {
  return new kernel.Manifold(
    new kernel.Mesh({
      numProp: 6,
      vertProperties: mesh.vertices,
      triVerts: mesh.triangles,
      mergeFromVert: mesh.mergeFrom,
      mergeToVert: mesh.mergeTo,
    }),
  );
}

/** The kernel keeps its memory to itself, but hands a view of it to whoever warps a shape. */
function heapBytes(kernel: ManifoldToplevel): number {
  let bytes = 0;
  const shape = kernel.Manifold.cube();
  const warped = shape.warpBatch((view) => {
    bytes = view.buffer.byteLength;
  });
  warped.delete();
  shape.delete();
  return bytes;
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
