import { ShapeUtils, Vector2 } from 'three';
import { type CutPoint, type Loop, loopArea } from './sliceMesh.ts';

/** Flat triangles, counter-clockwise: three indices each into `points`. */
export interface Filled {
  readonly points: readonly CutPoint[];
  readonly triangles: readonly number[];
}

/** Fills loops with triangles: counter-clockwise ones are wood, clockwise ones are holes in the smallest wood around. */
export function fillLoops(loops: readonly Loop[]): Filled {
  const woods = loops
    .map((loop) => ({ loop, area: loopArea(loop), holes: [] as Loop[] }))
    .filter(({ area }) => area > 0)
    .sort((a, b) => a.area - b.area);
  for (const hole of loops) {
    if (loopArea(hole) >= 0) continue;
    woods.find(({ loop }) => inside(hole[0] as CutPoint, loop))?.holes.push(hole);
  }

  const points: CutPoint[] = [];
  const triangles: number[] = [];
  for (const { loop, holes } of woods) {
    const base = points.length;
    const faces = ShapeUtils.triangulateShape(toVectors(loop), holes.map(toVectors));
    points.push(...loop, ...holes.flat());
    for (const face of faces) for (const index of face) triangles.push(base + index);
  }
  return { points, triangles };
}

const toVectors = (loop: Loop) => loop.map(([u, v]) => new Vector2(u, v));

/** Whether a point lies inside a loop, by counting how often a ray to the right crosses it. */
function inside([u, v]: CutPoint, loop: Loop): boolean {
  let odd = false;
  for (let i = 0; i < loop.length; i++) {
    const [au, av] = loop[i] as CutPoint;
    const [bu, bv] = loop[(i + 1) % loop.length] as CutPoint;
    if (av > v !== bv > v && u < au + ((v - av) / (bv - av)) * (bu - au)) odd = !odd;
  }
  return odd;
}
