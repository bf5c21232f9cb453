import { createDrafter } from '../models/draft/draftMesh.ts';
import { loadKernel } from '../models/kernel/loadKernel.ts';
import { createGeometry, type Geometry } from './geometry.ts';

/** Loads both kernels, 23 MB and 0.2 MB. Several threads need memory that can be shared. */
export async function loadGeometry(threads: boolean): Promise<Geometry> {
  const [kernel, drafter] = await Promise.all([loadKernel({ threads }), createDrafter()]);
  return createGeometry(kernel, drafter);
}
