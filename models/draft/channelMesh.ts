import type { Channel } from '../curves/curves.ts';
import type { Point } from '../curves/segment.ts';
import { columnSolid, type Stake } from './columnSolid.ts';
import type { MeshBuilder } from './meshBuilder.ts';
import type { Vec3 } from './vec3.ts';

/** Adds one string channel's cut. */
export function channelMesh(mesh: MeshBuilder, { at, direction, width, outline }: Channel): void {
  const [start, end, endLid, startLid] = outline as readonly [Point, Point, Point, Point];
  const [dx, dy] = direction;
  const stake = (low: Point, high: Point, side: 1 | -1): Stake => ({
    points: [low, high].map(([s, z]): Vec3 => [s, (side * width) / 2, z]),
  });
  const column = (low: Point, high: Point) => [stake(low, high, -1), stake(low, high, 1)];
  const [run, rise] = [end[0] - start[0], end[1] - start[1]];
  const length = Math.hypot(run, rise);
  columnSolid(mesh, {
    columns: [column(start, startLid), column(end, endLid)],
    floor: { normal: () => [rise / length, 0, -run / length] },
    lid: { normal: () => [0, 0, 1] },
    frame: {
      point: ([s, t, z]) => [at[0] + s * dx - t * dy, at[1] + s * dy + t * dx, z],
      vector: ([s, t, z]) => [s * dx - t * dy, s * dy + t * dx, z],
    },
  });
}
