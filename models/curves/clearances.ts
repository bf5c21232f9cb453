import type { Design } from '../../src/design/design.ts';
import { misfit, type Problem, roundForReading } from '../../src/design/problem.ts';
import { distanceTo, isInside, polygon } from './chain.ts';
import type { Curves, Slot } from './curves.ts';
import { LEAST_WOOD } from './pins.ts';
import { distance, type Point } from './segment.ts';
import { slotFloor, slotToPart } from './slot.ts';
import { topHeight } from './topHeight.ts';
import { undersideHeight } from './underside.ts';

/** How far a tangent arc must exceed the round-over that rolls along it: the ball must turn inside it. */
const ROLL = 1.25;

/** Everything about a drawn bridge that can't be: cuts that meet, run out of the wood or out of the block. */
export function clearances(design: Design, curves: Curves): readonly Problem[] {
  return [
    ...edgeFits(design),
    ...slotInBlock(design, curves),
    ...slotInOutline(design, curves),
    ...slotInWood(design, curves),
    ...pinsInOutline(design, curves),
    ...pinsApart(design, curves),
    ...pinsFromSlot(design, curves),
    ...bevelInWood(design, curves),
    ...channelsInWood(design, curves),
  ];
}

function edgeSize(design: Design): number {
  return design.top.edge === 'none' ? 0 : design.top.edgeSize;
}

function edgeFits(design: Design): Problem[] {
  const { top, footprint: f } = design;
  const size = edgeSize(design);
  const out: Problem[] = [];
  if (size === 0) return out;
  if (size > top.tip - LEAST_WOOD) {
    out.push(
      misfit(
        'top.edgeSize',
        size,
        `at most ${roundForReading(top.tip - LEAST_WOOD)} mm on this wing tip`,
        'Take a smaller edge or a thicker tip.',
      ),
    );
  }
  if (top.shoulder < ROLL * size) {
    out.push(
      misfit(
        'top.shoulder',
        top.shoulder,
        `at least ${roundForReading(ROLL * size + 0.005)} mm with this edge`,
        'Take a larger shoulder or a smaller edge.',
      ),
    );
  }
  if (f.tip !== 'round') {
    for (const corner of ['cornerFront', 'cornerBack'] as const) {
      if (f[corner] < ROLL * size) {
        out.push(
          misfit(
            `footprint.${corner}`,
            f[corner],
            `at least ${roundForReading(ROLL * size + 0.005)} mm with this edge`,
            'Take a larger corner radius or a smaller edge.',
          ),
        );
      }
    }
  }
  return out;
}

function slotInBlock(design: Design, { slot, profile }: Curves): Problem[] {
  const { saddle } = design;
  if (slot.roundEnds) {
    if (saddle.slotLength < saddle.slotWidth + 2) {
      return [
        misfit(
          'saddle.slotLength',
          saddle.slotLength,
          `at least ${roundForReading(saddle.slotWidth + 2)} mm`,
          'Lengthen the slot.',
        ),
      ];
    }
    const longest = (2 * (profile.crownEnd - LEAST_WOOD)) / Math.cos(slot.angle);
    if (saddle.slotLength > longest) {
      return [
        misfit(
          'saddle.slotLength',
          saddle.slotLength,
          `at most ${roundForReading(longest)} mm in this block`,
          'Shorten the slot or lengthen the middle block.',
        ),
      ];
    }
    return [];
  }
  const exit = Math.max(
    ...corners(slot).map(([u, v]) => {
      const [x, , z] = slotToPart(slot, profile.thickness, u, v, slotFloor(slot, u));
      return topHeight(profile, x) - z;
    }),
  );
  if (exit > -0.1) {
    return [
      misfit(
        'saddle.depth',
        saddle.depth,
        `at most ${roundForReading(saddle.depth - exit - 0.1)} mm for a slot that runs out over the wings`,
        'Make the slot shallower, the wings lower, the floor flat or the ends round.',
      ),
    ];
  }
  return [];
}

/** The four corners of the slot's plan (u, v). */
function corners(slot: Slot): readonly (readonly [number, number])[] {
  const [h, r] = [slot.halfLength, slot.width / 2];
  return [
    [-h, -r],
    [h, -r],
    [h, r],
    [-h, r],
  ];
}

/** The slot's outline in the part's plan, mm, seen at the crown and at the floor: a tilted slot leans between them. */
function slotPlans({ slot, profile }: Curves): readonly (readonly Point[])[] {
  const plan = polygon(slot.plan, 0.02);
  return [0, -1].map((level) =>
    plan.map(([u, v]): Point => {
      const [x, y] = slotToPart(slot, profile.thickness, u, v, level === 0 ? 0 : slotFloor(slot, u));
      return [x, y];
    }),
  );
}

function slotInOutline(design: Design, curves: Curves): Problem[] {
  const margin = edgeSize(design) + LEAST_WOOD;
  const points = slotPlans(curves).flat();
  if (points.every((p) => isInside(curves.outline, p) && distanceTo(curves.outline, p) >= margin)) return [];
  return [
    misfit(
      'footprint.slotBehindFront',
      design.footprint.slotBehindFront,
      `a slot that keeps ${roundForReading(margin)} mm from every edge`,
      'Move the slot back or forward, deepen the footprint, or make the slot shorter, narrower or less angled.',
    ),
  ];
}

function slotInWood(design: Design, curves: Curves): Problem[] {
  const { slot, profile, underside } = curves;
  const stations = [0, 0.5, 1].flatMap((t) => [t * slot.halfLength, -t * slot.halfLength]);
  const out: Problem[] = [];
  const under = Math.min(
    ...stations.flatMap((u) =>
      [-1, 1].map((side) => {
        const [x, y, z] = slotToPart(slot, profile.thickness, u, (side * slot.width) / 2, slotFloor(slot, u));
        // over the wings an open slot's floor is in the air
        return topHeight(profile, x) < z ? Number.POSITIVE_INFINITY : z - undersideHeight(underside, x, y);
      }),
    ),
  );
  if (under < LEAST_WOOD) {
    out.push(
      misfit(
        'saddle.depth',
        design.saddle.depth,
        `at most ${roundForReading(design.saddle.depth - (LEAST_WOOD - under))} mm in this thickness`,
        'Make the slot shallower or the bridge thicker.',
      ),
    );
  }
  const end = slot.roundEnds ? slot.halfLength : Math.min(slot.halfLength, profile.crownEnd);
  const [x, , z] = slotToPart(slot, profile.thickness, end, 0, slotFloor(slot, end));
  const left = topHeight(profile, x) - z;
  if (left < LEAST_WOOD) {
    out.push(
      misfit(
        'saddle.depth',
        design.saddle.depth,
        `at least ${roundForReading(design.saddle.depth + LEAST_WOOD - left)} mm, or the slot runs out where the crown falls`,
        'Deepen the slot, shorten it, flatten the crown, or let the floor follow it.',
      ),
    );
  }
  return out;
}

function pinsInOutline(design: Design, curves: Curves): Problem[] {
  const margin = edgeSize(design) + LEAST_WOOD;
  const bad = curves.pins.find(
    (p) => !isInside(curves.outline, p.at) || distanceTo(curves.outline, p.at) < p.reach + margin,
  );
  if (bad) {
    return [
      misfit(
        'pins.behindSlot',
        design.pins.behindSlot,
        `pins whose holes keep ${roundForReading(margin)} mm from the back edge`,
        'Bring the pins forward, or deepen the footprint behind the slot.',
      ),
    ];
  }
  const outside = curves.pins.find((p) => Math.abs(p.at[0]) + p.reach > curves.profile.crownEnd);
  if (outside) {
    return [
      misfit(
        'pins.spread',
        design.pins.spread,
        `at most ${roundForReading(design.pins.spread - 2 * (Math.abs(outside.at[0]) + outside.reach - curves.profile.crownEnd))} mm in this middle block`,
        'Narrow the pins’ spread or lengthen the middle block.',
      ),
    ];
  }
  return [];
}

function pinsApart(design: Design, curves: Curves): Problem[] {
  for (let i = 1; i < curves.pins.length; i++) {
    const [a, b] = [curves.pins[i - 1], curves.pins[i]];
    if (!a || !b) continue;
    const wood = distance(a.at, b.at) - a.reach - b.reach;
    if (wood < 0.3) {
      return [
        misfit(
          'pins.spread',
          design.pins.spread,
          `at least ${roundForReading(design.pins.spread + (0.3 - wood) * (curves.pins.length - 1) + 0.01)} mm for ${curves.pins.length} holes of this size`,
          'Widen the pins’ spread, or make bevel, mouth or drill smaller.',
        ),
      ];
    }
  }
  return [];
}

function pinsFromSlot(design: Design, curves: Curves): Problem[] {
  const plans = slotPlans(curves);
  let least = Number.POSITIVE_INFINITY;
  for (const pin of curves.pins) {
    for (const plan of plans) {
      for (let i = 0; i < plan.length; i++) {
        const [a, b] = [plan[i] as Point, plan[(i + 1) % plan.length] as Point];
        least = Math.min(least, distanceToSide(pin.at, a, b) - pin.reach);
      }
    }
  }
  if (least >= LEAST_WOOD) return [];
  return [
    misfit(
      'pins.behindSlot',
      design.pins.behindSlot,
      `at least ${roundForReading(design.pins.behindSlot + LEAST_WOOD - least + 0.01)} mm, so that wood is left between holes and slot`,
      'Move the pins back.',
    ),
  ];
}

function distanceToSide(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}

function bevelInWood(design: Design, curves: Curves): Problem[] {
  const p = design.pins;
  if (p.bevel === 'none') return [];
  const deep = (p.bevelDiameter - p.drill) / 2 / Math.tan((p.bevelAngle * Math.PI) / 360);
  const wood = Math.min(
    ...curves.pins.map((pin) => pin.top - undersideHeight(curves.underside, pin.at[0], pin.at[1])),
  );
  if (deep <= wood - 1) return [];
  return [
    misfit(
      'pins.bevelDiameter',
      p.bevelDiameter,
      `a bevel at most ${roundForReading(wood - 1)} mm deep (this one is ${roundForReading(deep)} mm)`,
      'Take a smaller or a flatter bevel.',
    ),
  ];
}

function channelsInWood(design: Design, curves: Curves): Problem[] {
  if (curves.channels.length === 0) return [];
  const p = design.pins;
  const out: Problem[] = [];
  const wood = Math.min(
    ...curves.pins.map((pin) => pin.top - undersideHeight(curves.underside, pin.at[0], pin.at[1])),
  );
  if (p.channelDepth > wood - 1) {
    out.push(
      misfit(
        'pins.channelDepth',
        p.channelDepth,
        `at most ${roundForReading(wood - 1)} mm in this thickness`,
        'Make the channel shallower.',
      ),
    );
  }
  const plans = slotPlans(curves);
  let room = Number.POSITIVE_INFINITY;
  for (const c of curves.channels) {
    for (const plan of plans) {
      // along the string the slot's back wall is at most this far: sampled on its outline
      for (const q of plan) {
        const rel: Point = [q[0] - c.at[0], q[1] - c.at[1]];
        const along = rel[0] * c.direction[0] + rel[1] * c.direction[1];
        const aside = Math.abs(rel[0] * c.direction[1] - rel[1] * c.direction[0]);
        if (along > 0 && aside < c.width / 2 + LEAST_WOOD) room = Math.min(room, along);
      }
    }
    room = Math.min(room, backWall(c.at, c.direction, plans) - (c.width / 2) * 0.2);
  }
  if (p.channelLength > room - LEAST_WOOD) {
    out.push(
      misfit(
        'pins.channelLength',
        p.channelLength,
        `at most ${roundForReading(room - LEAST_WOOD)} mm, short of the slot`,
        'Shorten the channel, or move the pins back.',
      ),
    );
  }
  return out;
}

/** Distance from a pin along its string to the first wall of the slot's plans. */
function backWall(at: Point, direction: Point, plans: readonly (readonly Point[])[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const plan of plans) {
    for (let i = 0; i < plan.length; i++) {
      const [a, b] = [plan[i] as Point, plan[(i + 1) % plan.length] as Point];
      const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
      const cross = direction[0] * ey - direction[1] * ex;
      if (Math.abs(cross) < 1e-12) continue;
      const [rx, ry] = [a[0] - at[0], a[1] - at[1]];
      const along = (rx * ey - ry * ex) / cross;
      const share = (rx * direction[1] - ry * direction[0]) / cross;
      if (along > 0 && share >= 0 && share <= 1) nearest = Math.min(nearest, along);
    }
  }
  return nearest;
}
