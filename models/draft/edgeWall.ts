import type { Edge, Profile, Underside } from '../curves/curves.ts';
import type { Chain } from '../curves/segment.ts';
import { insetProfile } from '../curves/topHeight.ts';
import { undersideHeight } from '../curves/underside.ts';
import type { Wall } from './columns.ts';
import type { Place } from './half.ts';
import { profileAt } from './profileAt.ts';
import type { Vec3 } from './vec3.ts';

/** The bridge's wall from the glue face up, and the edge between it and the top. */
export function edgeWall(profile: Profile, face: Underside, edge: Edge, deviation: number): Wall {
  const foot = (p: Pick<Place, 'x' | 'y'>): Vec3 => [p.x, p.y, undersideHeight(face, p.x, p.y)];
  if (edge.kind === 'none') return square(profile.chain, foot);
  return edge.kind === 'round'
    ? roundOver(insetProfile(profile, edge.size), edge.size, deviation, foot)
    : chamfer(profile.chain, edge.size, foot);
}

type Foot = (p: Pick<Place, 'x' | 'y'>) => Vec3;

/** Unit normal of the wall, out of the wood. */
const outward = (p: Place, inside: 1 | -1): Vec3 => [inside * p.dy, -inside * p.dx, 0];

function square(top: Chain, foot: Foot): Wall {
  return {
    lidX: (p) => p.x,
    stake: (p, inside) => {
      const m = outward(p, inside);
      return { points: [foot(p), [p.x, p.y, profileAt(top, p.x).z]], bands: [[m, m]] };
    },
  };
}

/**
 * A ball of the edge's radius rolls inside, touching wall and top: its centre stands over the outline moved in by the
 * radius, on the profile moved in by it; it touches the wall level with its centre, the top along the profile's
 * normal. The edge is the arc between the two.
 *
 * @param under the profile moved in by `r`
 */
function roundOver(under: Chain, r: number, deviation: number, foot: Foot): Wall {
  const pieces = piecesOf(r, deviation);
  const centre = (p: Place, inside: 1 | -1) => {
    const m = outward(p, inside);
    const x = p.x - r * m[0];
    return { m, x, y: p.y - r * m[1], top: profileAt(under, x) };
  };
  return {
    lidX: (p, inside) => {
      const { x, top } = centre(p, inside);
      return x + r * top.nx;
    },
    stake: (p, inside) => {
      const { m, x, y, top } = centre(p, inside);
      const angle = Math.acos(m[0] * top.nx);
      const bulge = evenOut(pieces, angle / pieces);
      const points: Vec3[] = [foot(p)];
      const bands: (readonly [Vec3, Vec3])[] = [];
      let below = m;
      for (let k = 0; k <= pieces; k++) {
        const [a, b] = [
          Math.sin(((pieces - k) * angle) / pieces) / Math.sin(angle),
          Math.sin((k * angle) / pieces) / Math.sin(angle),
        ];
        const n: Vec3 = [a * m[0] + b * top.nx, a * m[1], b * top.nz];
        const out = k === 0 || k === pieces ? r : r * bulge;
        points.push([x + out * n[0], y + out * n[1], top.z + out * n[2]]);
        bands.push([below, n]);
        below = n;
      }
      return { points, bands };
    },
  };
}

/**
 * By how much to lengthen the inner spokes of a fan of n triangles, its outer ones staying 1, so that it covers as
 * much as the sector of a circle: chords alone would lose wood all along the edge. Positive root of
 * (n − 2)·sin φ·q² + 2·sin φ·q − n·φ = 0, φ the angle between spokes.
 */
function evenOut(n: number, angle: number): number {
  const s = Math.sin(angle);
  const a = (n - 2) * s;
  return (-s + Math.sqrt(s * s + a * n * angle)) / a;
}

/** The fewest pieces of a quarter turn whose lengthened spokes stray no further than the deviation. */
function piecesOf(radius: number, deviation: number): number {
  let n = 3;
  while (radius * (evenOut(n, Math.PI / 2 / n) - 1) > deviation) n++;
  return n;
}

/**
 * A flat of `e` mm taken along wall and top, measured square to the edge: the edge runs along (d·cos β, sin β), d the
 * outline's direction and β the angle at which it climbs.
 */
function chamfer(profile: Chain, e: number, foot: Foot): Wall {
  const edgeAt = (p: Place) => {
    const top = profileAt(profile, p.x);
    const steep = 1 / top.nz;
    const slope = -top.nx / top.nz;
    const along = p.dx * steep;
    const length = Math.hypot(along, p.dy);
    return { top, steep, slope, cos: along / length, sin: p.dy / length };
  };
  /** Where the flat ends on the top: e·sin down the profile, as a chord of it, and e·cos level across it. */
  const onTop = (p: Place, inside: 1 | -1): Vec3 => {
    const { top, steep, cos, sin } = edgeAt(p);
    let x = (-inside * e * sin) / steep;
    let end = profileAt(profile, p.x + x);
    for (let i = 0; i < 3 && x !== 0; i++) {
      x *= (e * Math.abs(sin)) / Math.hypot(x, end.z - top.z);
      end = profileAt(profile, p.x + x);
    }
    return [p.x + x, p.y + inside * e * cos, end.z];
  };
  return {
    lidX: (p, inside) => onTop(p, inside)[0],
    lead: (p) => {
      const climb = edgeAt(p).slope * p.dx;
      return (e * climb) / Math.hypot(1, climb);
    },
    stake: (p, inside, on) => {
      const { top, slope } = edgeAt(p);
      const [dx, dy] = [on.x - p.x, on.y - p.y];
      const low: Vec3 = [on.x, on.y, top.z - Math.sqrt(Math.max(0, e * e - dx * dx - dy * dy))];
      const high = onTop(p, inside);
      const m = outward(on, inside);
      const n = flatNormal([p.dx, p.dy, slope * p.dx], low, high, inside);
      return {
        points: [foot(on), low, high],
        bands: [
          [m, m],
          [n, n],
        ],
      };
    },
  };
}

/** Unit normal of a flat that holds the edge's direction and the line from its foot on the wall to its top. */
function flatNormal(edge: Vec3, low: Vec3, high: Vec3, inside: 1 | -1): Vec3 {
  const up: Vec3 = [high[0] - low[0], high[1] - low[1], high[2] - low[2]];
  const n: Vec3 = [
    inside * (edge[1] * up[2] - edge[2] * up[1]),
    inside * (edge[2] * up[0] - edge[0] * up[2]),
    inside * (edge[0] * up[1] - edge[1] * up[0]),
  ];
  const length = Math.hypot(...n);
  return [n[0] / length, n[1] / length, n[2] / length];
}
