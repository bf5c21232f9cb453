import type { Profile, Slot } from '../curves/curves.ts';
import { rootOfFalling } from '../curves/rim/root.ts';
import type { Point } from '../curves/segment.ts';
import { slotFloor } from '../curves/slot.ts';
import type { Cut } from './cut.ts';
import { between, betweenRounded, gauss, panels } from './gauss.ts';
import type { Interval } from './interval.ts';

/** The saddle slot: over any place one stretch, from the floor or the back wall up to the front wall or out at the top. */
export function slotCut(slot: Slot, profile: Profile): Cut {
  const { thickness } = profile;
  const [cosAngle, sinAngle] = [Math.cos(slot.angle), Math.sin(slot.angle)];
  const [cosTilt, sinTilt] = [Math.cos(slot.tilt), Math.sin(slot.tilt)];
  const r = slot.width / 2;
  const straight = slot.roundEnds ? slot.halfLength - r : slot.halfLength;
  const deepest = Math.min(slotFloor(slot, 0), slotFloor(slot, slot.halfLength));

  /** Half the width at u along the slot: less in the round ends. */
  const halfWidth = (u: number): number => {
    const over = Math.abs(u) - straight;
    if (over <= 0) return r;
    return slot.roundEnds && over < r ? Math.sqrt(r * r - over * over) : 0;
  };

  /** `u` along, `a` across in plan; the slot's own v = a·cos tilt + h·sin tilt, w = h·cos tilt − a·sin tilt. */
  const removedAt = (u: number, a: number): Interval | undefined => {
    const half = halfWidth(u);
    if (half === 0) return undefined;
    const floor = thickness + (slotFloor(slot, u) + a * sinTilt) / cosTilt;
    if (slot.tilt === 0) return Math.abs(a) <= half ? [floor, Number.POSITIVE_INFINITY] : undefined;
    const back = thickness + (-half - a * cosTilt) / sinTilt;
    const front = thickness + (half - a * cosTilt) / sinTilt;
    return front > floor ? [Math.max(floor, back), front] : undefined;
  };

  const toPart = (u: number, a: number): Point => [u * cosAngle - a * sinAngle, u * sinAngle + a * cosAngle];
  const across = (v: number, w: number) => v * cosTilt - w * sinTilt;
  const box = (): Cut['box'] => {
    const [low, high] = [-r / cosTilt, Math.max(r / cosTilt, across(r, deepest))];
    const corners = [-slot.halfLength, slot.halfLength].flatMap((u) => [low, high].map((a) => toPart(u, a)));
    const [xs, ys] = [corners.map((c) => c[0]), corners.map((c) => c[1])];
    return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
  };

  /** Where a wall v = ± half width comes out at the top, across in plan. */
  const exit = (u: number, v: number, top: (x: number) => number): number => {
    let a = v / cosTilt;
    // the top hardly changes across the slot: each round brings it nearer by tan tilt · sin angle · the top's slope
    for (let i = 0; i < 4; i++) {
      a = (v - (top(u * cosAngle - a * sinAngle) - thickness) * sinTilt) / cosTilt;
    }
    return a;
  };

  /** Across in plan, where a wall meets the floor or comes out at the top. */
  const bendsAt = (u: number, top: (x: number) => number): readonly number[] => {
    const half = halfWidth(u);
    if (slot.tilt === 0) return [-half, half];
    const floor = slotFloor(slot, u);
    return [across(-half, floor), across(half, floor), exit(u, -half, top), exit(u, half, top)];
  };

  return {
    box: box(),
    landmarks: (z) => {
      const heights = z === undefined ? [thickness, thickness + deepest] : [z];
      const tips: readonly Point[] = [
        [slot.halfLength, 0],
        [straight, r],
        [straight, -r],
      ];
      return heights.flatMap((height) =>
        tips.flatMap(([u, v]) => {
          const a = (v - (height - thickness) * sinTilt) / cosTilt;
          return [toPart(u, a), toPart(-u, a)];
        }),
      );
    },
    removed: (x, y) => removedAt(x * cosAngle + y * sinAngle, -x * sinAngle + y * cosAngle),
    places: ({ top }, visit) => {
      const joints = profile.chain.map((s) => s.to[0] / cosAngle);
      const stops = panels(-slot.halfLength, slot.halfLength, [
        -straight,
        straight,
        ...joints,
        ...runOuts(slot, straight, (u) => top(u * cosAngle) - thickness),
      ]);
      stops.slice(1).forEach((to, i) => {
        betweenRounded(stops[i] as number, to, gauss(10), (u, du) => {
          const bends = bendsAt(u, top);
          const walls = panels(Math.min(...bends), Math.max(...bends), bends);
          walls.slice(1).forEach((end, k) => {
            between(walls[k] as number, end, gauss(4), (a, da) => {
              const [x, y] = toPart(u, a);
              visit(x, y, du * da);
            });
          });
        });
      });
    },
    turnsAt: (x, { top }) => {
      const middle = x / cosAngle;
      // u hardly changes across the slot, but in a round end the walls do with u
      const isRound = Math.abs(middle) > straight - slot.width;
      return bendsAt(middle, top).map((guess, which) => {
        const off = (a: number) => (bendsAt((x + a * sinAngle) / cosAngle, top)[which] as number) - a;
        const a = isRound ? rootOfFalling(off, guess, 2 * slot.width, guess) : guess;
        return (a + x * sinAngle) / cosAngle;
      });
    },
  };
}

/** u at which an open slot's floor comes out of the falling top. */
function runOuts(slot: Slot, straight: number, topOver: (u: number) => number): readonly number[] {
  if (slot.roundEnds) return [];
  return [-1, 1].map((side) => {
    const over = (u: number) => topOver(side * u) - slotFloor(slot, u);
    return side * (over(0) > 0 ? rootOfFalling(over, 0, straight, straight) : 0);
  });
}
