import { arcPieces, polygon } from '../curves/chain.ts';
import type { Curves, Profile, Underside } from '../curves/curves.ts';
import type { Chain } from '../curves/segment.ts';
import { undersideHeight } from '../curves/underside.ts';
import { type Cap, columnSolid } from './columnSolid.ts';
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
  const rows = rowsOf(underside, outline, deviation);
  const wishes = [
    { x: 0, room: 0 },
    ...profileWishes(profile, deviation),
    ...undersideWishes(underside, outline, deviation),
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

/** Columns over the whole length, near enough for an underside that is curved along it. */
function undersideWishes(face: Underside, outline: Chain, deviation: number): readonly Wish[] {
  if (face.shape === 'flat') return [];
  // half: on a sphere the wood added along and across adds up
  const step = chord(face.radius, chordDeviation(face.radius, deviation) / 2);
  const half = Math.max(...polygon(outline, 0.1).map((p) => p[0]));
  const n = Math.ceil((2 * half) / step);
  return wishesAt(Array.from({ length: n + 1 }, (_, i) => -half + (2 * half * i) / n));
}

/** Into how many rows the underside is divided from back to front. */
function rowsOf(face: Underside, outline: Chain, deviation: number): number {
  if (face.shape !== 'sphere') return 1;
  const ys = polygon(outline, 0.1).map((p) => p[1]);
  // half: the points between are raised by up to 4/3 of the sagitta
  return Math.max(2, Math.ceil((Math.max(...ys) - Math.min(...ys)) / chord(face.radius, deviation / 2)));
}

/** Length of the chord of a large circle that has this sagitta, mm. */
function chord(radius: number, sagitta: number): number {
  return Math.sqrt(8 * radius * sagitta);
}

function glueFace(face: Underside, rows: number): Cap {
  if (face.shape === 'flat') return { normal: () => [0, 0, -1] };
  const { shape, radius } = face;
  const normal = ([x, y]: Vec3): Vec3 => {
    const across = shape === 'sphere' ? y : 0;
    const up = Math.sqrt(radius ** 2 - x * x - across * across);
    return [-x / radius, -across / radius, -up / radius];
  };
  if (shape === 'cylinder') return { normal };
  return {
    normal,
    between: (p, q) => {
      const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
      // chords lie under the dome by 2/3 of their sagitta on average; with the ends on it, raising the points between
      // by this much makes up for that (derived)
      const rise = (2 / 3) * (Math.hypot(dx, dy) ** 2 / (8 * radius * rows * (rows - 1)));
      return Array.from({ length: rows - 1 }, (_, k): Vec3 => {
        const [x, y] = [p[0] + ((k + 1) * dx) / rows, p[1] + ((k + 1) * dy) / rows];
        return [x, y, undersideHeight(face, x, y) + rise];
      });
    },
  };
}
