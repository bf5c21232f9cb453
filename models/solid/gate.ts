import type { Curves } from '../curves/curves.ts';
import { curvesBox } from '../curves/curvesBox.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import { KernelError } from '../kernel/kernelError.ts';
import { areaOf, boxOf, countSolids, isValid, volumeOf } from '../kernel/measure.ts';
import type { PartMesh } from '../mesh/partMesh.ts';
import type { SolidFigures } from './solidFigures.ts';
import { throughHoles } from './throughHoles.ts';

/** A lost pin hole is 0.5–0.7 % of a bridge; a good draft and a good solid differ by less than 0.15 %. */
const VOLUME_TOLERANCE = 0.003;
/** mm */
const BOX_TOLERANCE = 0.01;

/**
 * The gate that every solid passes before it is shown or written: valid by the kernel's own check, one solid, as many
 * holes through it as pins, the box that the curves have, and the draft's volume within 0.3 %. The kernel can lose a
 * hole, or all, and still say valid. Throws `KernelError`.
 */
export function gate(
  kernel: Kernel,
  shape: Shape,
  mesh: PartMesh,
  curves: Curves,
  draftVolume: number,
): SolidFigures {
  const refuse = (reason: string): never => {
    throw new KernelError('check of the finished solid', reason);
  };
  if (!isValid(kernel, shape)) refuse('its faces don’t close properly');
  const solids = countSolids(kernel, shape);
  if (solids !== 1) refuse(`${solids} pieces instead of one`);
  const holes = throughHoles(mesh);
  if (holes === undefined) refuse('its mesh is not closed');
  if (holes !== curves.pins.length) refuse(`${holes} holes go through it instead of ${curves.pins.length}`);
  const box = boxOf(kernel, shape);
  const expected = curvesBox(curves);
  const off = Math.max(...box.map((b, i) => Math.abs(b - (expected[i] as number))));
  if (!(off <= BOX_TOLERANCE)) refuse(`its box is ${off.toFixed(3)} mm off the drawing’s`);
  const { volume, centroid } = volumeOf(kernel, shape);
  const share = Math.abs(volume / draftVolume - 1);
  if (!(share <= VOLUME_TOLERANCE)) refuse(`its volume is ${(100 * share).toFixed(2)} % off the draft’s`);
  return {
    valid: true,
    volumeMm3: volume,
    areaMm2: areaOf(kernel, shape),
    boxMm: box,
    centroidMm: [centroid[0], centroid[1], centroid[2]],
    throughHoles: curves.pins.length,
  };
}
