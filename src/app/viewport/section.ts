import { Plane, Vector3 } from 'three';
import type { Box } from './meshFigures.ts';
import { axesOf, type Direction, FIRST_VIEW } from './pose.ts';
import type { Axis } from './sliceMesh.ts';

/** A section as the user set it. */
export interface Section {
  /** The cut is square to this axis. */
  readonly axis: Axis;
  /** Place of the cut on the axis, mm from the origin. */
  readonly at: number;
  /** Which side of the cut stays: toward larger values (1) or smaller ones (−1). */
  readonly keep: 1 | -1;
}

export const AXES = ['x', 'y', 'z'] as const satisfies readonly Axis[];

const INDEX = { x: 0, y: 1, z: 2 } as const;

/** Where along an axis the part can be cut, mm. */
export function reachOf(box: Box, axis: Axis): { min: number; max: number } {
  return { min: box[INDEX[axis]] as number, max: box[INDEX[axis] + 3] as number };
}

/** The section with its cut moved into the part, where it lies outside. */
export function within(section: Section, box: Box): Section {
  const { min, max } = reachOf(box, section.axis);
  return { ...section, at: Math.min(max, Math.max(min, section.at)) };
}

/** Where a cut shows most, mm on its axis, for the axes of which that is known. */
export type Telling = Readonly<Partial<Record<Axis, number>>>;

/** A cut where it shows most, else through the middle; its face toward the eye. */
export function sectionAcross(axis: Axis, box: Box, eye: Direction, telling: Telling): Section {
  const { min, max } = reachOf(box, axis);
  const toward = axesOf(eye).back[INDEX[axis]] as number;
  const at = telling[axis] ?? Math.round(5 * (min + max)) / 10;
  return within({ axis, at, keep: toward > 1e-6 ? -1 : 1 }, box);
}

/** What is kept: the positive side of this plane. */
export function planeOf({ axis, at, keep }: Section): Plane {
  const normal = new Vector3();
  normal[axis] = keep;
  return new Plane(normal, -keep * at);
}

/** What a section leaves of the points (xyz triples, mm), and the corners of the cut through the box. */
export function kept(points: Float32Array, box: Box, section: Section | undefined): Float32Array {
  if (!section) return points;
  const { axis, at, keep } = section;
  const k = INDEX[axis];
  const left: number[] = [];
  for (let i = 0; i + 2 < points.length; i += 3) {
    if (keep * ((points[i + k] as number) - at) >= 0) left.push(...points.subarray(i, i + 3));
  }
  for (const x of [box[0], box[3]]) {
    for (const y of [box[1], box[4]]) {
      for (const z of [box[2], box[5]]) {
        const corner = [x, y, z];
        corner[k] = at;
        left.push(...corner);
      }
    }
  }
  return new Float32Array(left);
}

/** From where a cut face is seen well, slantwise; nothing where the eye sees it well already. */
export function towardCut(section: Section, eye: Direction): Direction | undefined {
  const face = facing(section);
  const [from, to] = [axesOf(eye).back, axesOf(face).back];
  if (from[0] * to[0] + from[1] * to[1] + from[2] * to[2] > SEEN_WELL) return undefined;
  if (section.axis === 'z') return { azimuth: FIRST_VIEW.azimuth, elevation: face.elevation / 2 };
  // The shorter way round from where the eye stands.
  const off = ((((eye.azimuth - face.azimuth) % 360) + 540) % 360) - 180;
  return { azimuth: face.azimuth + (off < 0 ? -SLANT : SLANT), elevation: SLANT_ABOVE };
}

/** Cosine of the flattest angle at which a cut is still read. */
const SEEN_WELL = 0.45;
/** Degrees to the side of the cut face, and above it. */
const SLANT = 40;
const SLANT_ABOVE = 24;

/** The direction that looks straight at the cut face. */
export function facing({ axis, keep }: Section): Direction {
  if (axis === 'x') return { azimuth: keep > 0 ? -90 : 90, elevation: 0 };
  if (axis === 'y') return { azimuth: keep > 0 ? 0 : 180, elevation: 0 };
  return { azimuth: 0, elevation: keep > 0 ? -90 : 90 };
}
