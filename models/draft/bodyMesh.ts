import { arcPieces } from '../curves/chain.ts';
import type { Curves, Profile, Underside } from '../curves/curves.ts';
import { undersideHeight } from '../curves/underside.ts';
import type { Cap } from './columnSolid.ts';
import { columnSolid } from './columnSolid.ts';
import { columns } from './columns.ts';
import { edgeWall } from './edgeWall.ts';
import { chordDeviation, halvesOf } from './half.ts';
import { type ClosedMesh, MeshBuilder } from './meshBuilder.ts';
import { profileAt } from './profileAt.ts';
import { type Wish, wishesAt } from './stations.ts';
import type { Vec3 } from './vec3.ts';

/** The bridge before slot, pins and channels are cut: outline, top, edge and underside, closed, outward, mm. */
export function bodyMesh(curves: Curves, deviation: number): ClosedMesh {
  const { outline, profile, underside, edge } = curves;
  const ys = outline.flatMap((s) => [s.from[1], s.to[1]]);
  const step = chordOf(underside, deviation);
  const rows = underside.shape === 'sphere' ? Math.ceil((Math.max(...ys) - Math.min(...ys)) / step) : 1;
  const wishes = [
    { x: 0, room: 0 },
    ...profileWishes(profile, deviation),
    ...every(step, outlineEnd(outline)),
  ];
  const mesh = new MeshBuilder(1);
  columnSolid(mesh, {
    columns: columns(
      halvesOf(outline),
      edgeWall(profile, underside, edge, deviation),
      wishes,
      rows,
      deviation,
    ),
    floor: glueFace(underside, rows),
    lid: {
      normal: ([x]) => {
        const { nx, nz } = profileAt(profile.chain, x);
        return [nx, 0, nz];
      },
    },
    frame: { point: (p) => p, vector: (v) => v },
  });
  return mesh.finish();
}

function outlineEnd(outline: Curves['outline']): number {
  return Math.max(...outline.flatMap((s) => [s.from[0], s.to[0]]));
}

/** Columns at the ends of the chords of crown, shoulders, blends and hollow runs. */
function profileWishes(profile: Profile, deviation: number): readonly Wish[] {
  const xs: number[] = [];
  for (const s of profile.chain) {
    xs.push(s.from[0]);
    if (s.kind === 'line') continue;
    const [from, to] = [s.from, s.to].map((p) => Math.asin((p[0] - s.centre[0]) / s.radius)) as [
      number,
      number,
    ];
    const n = arcPieces(s.radius, to - from, chordDeviation(s.radius, deviation));
    for (let i = 1; i < n; i++) xs.push(s.centre[0] + s.radius * Math.sin(from + (i * (to - from)) / n));
  }
  return wishesAt(xs);
}

/** Columns over the whole length, `step` mm apart; none when the step is infinite. */
function every(step: number, half: number): readonly Wish[] {
  const n = Math.ceil((2 * half) / step);
  return wishesAt(Array.from({ length: n + 1 }, (_, i) => -half + (2 * half * i) / Math.max(1, n)));
}

/** Length of a chord of the underside, mm; infinite for a flat one. */
function chordOf(face: Underside, deviation: number): number {
  if (face.shape === 'flat') return Number.POSITIVE_INFINITY;
  return Math.sqrt(8 * face.radius * chordDeviation(face.radius, deviation));
}

function glueFace(face: Underside, rows: number): Cap {
  const normal = ([x, y]: Vec3): Vec3 => {
    if (face.shape === 'flat') return [0, 0, -1];
    const across = face.shape === 'sphere' ? y : 0;
    const up = Math.sqrt(face.radius ** 2 - x * x - across * across);
    return [-x / face.radius, -across / face.radius, -up / face.radius];
  };
  return { normal, curved: { rows, z: (x, y) => undersideHeight(face, x, y) } };
}
