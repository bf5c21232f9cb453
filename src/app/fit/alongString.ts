import { crossingsAt } from '../../../models/curves/crossingsAt.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { slotFloor } from '../../../models/curves/slot.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { StringBreak } from '../../trade/fit/breaks.ts';
import type { Crown } from '../../trade/fit/crowns.ts';
import { stringRun } from './stringRun.ts';

/** Steps in which a curved line of the section is followed. */
const STEPS = 24;

/**
 * The bridge cut upright along one string, which turns a little over its crown: (s, z) in mm, s from the crown toward the
 * pin, negative toward the nut; z over the glue plane.
 */
export interface AlongString {
  /** Front edge and back edge of the bridge. */
  readonly front: number;
  readonly back: number;
  /** The wood in front of the pin hole and behind it, closed; one piece where there is no hole behind the slot. */
  readonly wood: readonly (readonly Point[])[];
  /** Floor and faces of the slot: front top, front foot, back foot, back top. */
  readonly slot: readonly [Point, Point, Point, Point];
  /** The saddle, closed; its crown at s = 0. */
  readonly saddle: readonly Point[];
  /** The string's underside, from before the crown to inside its hole. */
  readonly string: readonly Point[];
  /** The pin's axis; undefined when the pin does not lie behind the slot. */
  readonly pin: number | undefined;
}

export function alongString(
  curves: Curves,
  crown: Crown,
  { over, wood }: StringBreak,
  i: number,
): AlongString {
  const { slot, profile } = curves;
  const pin = curves.pins[i];
  if (!pin) throw new Error('a string without its pin');
  const far = Math.hypot(pin.at[0] - crown.at[0], pin.at[1] - crown.at[1]);
  const way: Point = [(pin.at[0] - crown.at[0]) / far, (pin.at[1] - crown.at[1]) / far];
  // in front the string runs on toward the nut, hardly aslant
  const place = (s: number): Point =>
    s < 0 ? [crown.at[0], crown.at[1] - s] : [crown.at[0] + s * way[0], crown.at[1] + s * way[1]];
  const top = (s: number): number => topHeight(profile, place(s)[0]);
  const bottom = (s: number): number => undersideHeight(curves.underside, ...place(s));

  const [c, sine] = [Math.cos(slot.angle), Math.sin(slot.angle)];
  const across = ([x, y]: Point): number => y * c - x * sine;
  /** Where the cut is so far across the slot. */
  const where = (v: number): number => {
    const beyond = v - across(crown.at);
    return beyond > 0 ? -beyond / c : beyond / across(way);
  };
  const [ct, st] = [Math.cos(slot.tilt), Math.sin(slot.tilt)];
  const half = slot.width / 2;
  const floor = slotFloor(slot, crown.at[0] / c);
  const foot = (v: number): Point => [where(v * ct - floor * st), profile.thickness + v * st + floor * ct];
  const face = (v: number, z: number): number => where(v / ct - (z - profile.thickness) * (st / ct));
  const rim = (v: number): Point => {
    const z = top(face(v, profile.thickness));
    return [face(v, z), z];
  };
  const notch = [rim(half), foot(half), foot(-half), rim(-half)] as const;

  const ys = crossingsAt(curves.outline, crown.at[0]);
  const front = crown.at[1] - (ys[ys.length - 1] ?? 0);
  const back = far + (pin.at[1] - (crossingsAt(curves.outline, pin.at[0])[0] ?? 0)) / -way[1];
  const follow = (line: (s: number) => number, from: number, to: number): readonly Point[] =>
    Array.from({ length: STEPS + 1 }, (_, k): Point => {
      const s = from + ((to - from) * k) / STEPS;
      return [s, line(s)];
    });

  const entry = wood[wood.length - 1];
  const outline = pin.outline.reamed.filter(([r]) => r > 0);
  const wall = (side: 1 | -1, upTo: number): readonly Point[] => {
    const foot = outline[0]?.[0] ?? 0;
    const inside = outline.filter(([, z]) => z > bottom(far) && z < upTo);
    return [
      [far + side * foot, bottom(far + side * foot)],
      ...inside.map(([r, z]): Point => [far + side * r, z]),
    ];
  };
  const hole = entry && {
    front: [...wall(-1, entry[1])].reverse(),
    back: [...wall(1, top(far)), [far + pin.reach, top(far + pin.reach)] as Point],
  };
  const head: readonly Point[] = [...follow(top, front, notch[0][0]), ...notch];
  const pieces = hole
    ? [
        [
          ...head,
          ...wood,
          ...hole.front,
          ...follow(bottom, hole.front[hole.front.length - 1]?.[0] ?? far, front),
        ],
        [
          ...hole.back,
          ...follow(top, far + pin.reach, back),
          ...follow(bottom, back, hole.back[0]?.[0] ?? far),
        ],
      ]
    : [[...head, ...follow(top, notch[3][0], back), ...follow(bottom, back, front)]];

  return {
    front,
    back,
    wood: pieces,
    slot: notch,
    saddle: saddleOf(crown.height, over?.behind ?? 0, notch, (v, z) => [face(v, z), z], half),
    string: [
      ...inFront(front, crown.height, over ? over.angle - over.behind : 0),
      ...stringRun(crown.height, wood),
      ...(hole && entry ? [[entry[0] + pin.reach / 2, bottom(far) - 1] as Point] : []),
    ],
    pin: entry && far,
  };
}

/** How far before the bridge the string is drawn, mm. */
const BEFORE = 4;

function inFront(front: number, height: number, slopeDeg: number): readonly Point[] {
  const s = front - BEFORE;
  return [[s, height + s * Math.tan((slopeDeg * Math.PI) / 180)]];
}

/** How much lower than the crown a saddle is rounded off at its front face, of the way there; and beyond the string behind. */
const ROUND = 0.3;
const CLEAR = 0.15;

/**
 * The saddle between the slot's faces: its crown rounded off to the front, and behind it lower than the string leaves it.
 * Only the crown's place and height are the fit's; the rounding is drawn as one would file it.
 */
function saddleOf(
  height: number,
  behindDeg: number,
  [, frontFoot, backFoot]: AlongString['slot'],
  face: (v: number, z: number) => Point,
  half: number,
): readonly Point[] {
  const frontWay = -face(half, height)[0];
  const backWay = face(-half, height)[0];
  const frontTop = face(half, Math.max(frontFoot[1], height - Math.max(0, ROUND * frontWay)));
  const steep = Math.tan((Math.max(0, behindDeg) * Math.PI) / 180) + CLEAR;
  const backTop = face(-half, Math.max(backFoot[1], height - Math.max(0, steep * backWay)));
  return [frontFoot, frontTop, [0, height], backTop, backFoot];
}
