import { arcPieces } from '../curves/chain.ts';
import type { Curves } from '../curves/curves.ts';
import { slotFloor, slotToPart } from '../curves/slot.ts';
import { columnSolid } from './columnSolid.ts';
import { columns } from './columns.ts';
import { chordDeviation, halvesOf } from './half.ts';
import type { MeshBuilder } from './meshBuilder.ts';
import { wishesAt } from './stations.ts';
import type { Vec3 } from './vec3.ts';

/** How far a slot's cut is carried on above the crown's top, mm: less than the wood between slot and pins. */
const OVER = 0.3;

/** Adds the saddle slot's cut, from its floor to the air above it. */
export function slotMesh(mesh: MeshBuilder, { slot, profile }: Curves, deviation: number): void {
  // the lid lies in the slot's own frame, so its back corner is the lowest when it leans
  const lid = (OVER + (slot.width / 2) * Math.sin(slot.tilt)) / Math.cos(slot.tilt);
  const floorSlope = (u: number) =>
    slot.floorRadius === undefined ? 0 : -u / Math.sqrt(slot.floorRadius ** 2 - u * u);
  columnSolid(mesh, {
    columns: columns(
      halvesOf(slot.plan),
      {
        lidX: (p) => p.x,
        stake: (p, inside) => {
          const points: Vec3[] = [
            [p.x, p.y, slotFloor(slot, p.x)],
            [p.x, p.y, lid],
          ];
          const m: Vec3 = [inside * p.dy, -inside * p.dx, 0];
          return slot.roundEnds ? { points, bands: [[m, m]] } : { points };
        },
      },
      slot.floorRadius === undefined ? [] : wishesAt(chords(slot.floorRadius, slot.halfLength, deviation)),
      1,
      deviation,
    ),
    floor: {
      normal: ([u]) => {
        const slope = floorSlope(u);
        const length = Math.hypot(1, slope);
        return [slope / length, 0, -1 / length];
      },
    },
    lid: { normal: () => [0, 0, 1] },
    frame: {
      point: ([u, v, w]) => slotToPart(slot, profile.thickness, u, v, w),
      vector: ([u, v, w]) => slotToPart(slot, 0, u, v, w),
    },
  });
}

/** Ends of the chords of an arc over −half to +half. */
function chords(radius: number, half: number, deviation: number): readonly number[] {
  const angle = Math.asin(half / radius);
  const n = arcPieces(radius, 2 * angle, chordDeviation(radius, deviation));
  return Array.from({ length: n + 1 }, (_, i) => radius * Math.sin(-angle + (2 * angle * i) / n));
}
