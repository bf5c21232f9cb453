import type { Chain, Point } from './segment.ts';

/** Whether pin holes are parallel, as they leave the drill, or taper, as the reamer leaves them. */
export type Holes = 'drilled' | 'reamed';

/** Everything drawn of one bridge before it is solid, mm. Made by `drawCurves`. */
export interface Curves {
  /** Closed, counter-clockwise, in plan. */
  readonly outline: Chain;
  readonly profile: Profile;
  readonly underside: Underside;
  readonly edge: Edge;
  readonly slot: Slot;
  readonly pins: readonly Pin[];
  /** One a pin, or none. */
  readonly channels: readonly Channel[];
}

/** The top in elevation (x, z): crown, shoulder, blend and wing as one tangent chain, symmetric in x = 0. */
export interface Profile {
  /** From left to right (+x), reaching beyond both tips. First and last are level or straight run-outs. */
  readonly chain: Chain;
  /** Thickness at the origin: z of the crown's top. */
  readonly thickness: number;
  readonly crownRadius: number;
  /** x at which the crown ends and the shoulder begins. */
  readonly crownEnd: number;
  /** x at which the blend ends and the wing's run begins. */
  readonly runStart: number;
}

/** The glue face: z = 0 at the origin, falling away with the soundboard. */
export type Underside =
  | { readonly shape: 'flat' }
  | { readonly shape: 'cylinder' | 'sphere'; readonly radius: number };

export type Edge = { readonly kind: 'none' } | { readonly kind: 'round' | 'chamfer'; readonly size: number };

/**
 * The saddle slot in its own frame: u along the slot, v across it (toward the nut), w up along its walls; the
 * frame's origin is on the uncut top at (0, 0, thickness). Frame to part: lean back about u by `tilt` (the top goes
 * toward −Y), then turn about z by `angle`, then lift by the thickness. The slot takes every point with w ≥ floor(u)
 * and (u, v) inside the plan.
 */
export interface Slot {
  /** Radians, counter-clockwise seen from above (a left-handed design has it negative). */
  readonly angle: number;
  /** Radians, back toward the pins. */
  readonly tilt: number;
  readonly width: number;
  /** Half the overall length. For an open slot: where the cut ends, in the air beyond the block. */
  readonly halfLength: number;
  readonly roundEnds: boolean;
  /** Depth along the walls at u = 0. */
  readonly depth: number;
  /** Radius of the floor's arc (u, w), centre below; undefined for a flat floor. */
  readonly floorRadius: number | undefined;
  /** The plan (u, v): a stadium, or a rectangle when the ends are open; closed, counter-clockwise. */
  readonly plan: Chain;
}

/** One pin hole: a solid of revolution about the vertical through `at`. */
export interface Pin {
  readonly at: Point;
  /** z of the uncut top at the pin. */
  readonly top: number;
  /**
   * Half the hole's outline, (radius, z), from the lowest point up; first and last lie on the axis; radius 0 only there.
   * It reaches below the underside and above the top.
   */
  readonly outline: Readonly<Record<Holes, readonly Point[]>>;
  /** Largest radius of the hole at the surface, reamed and bevelled. */
  readonly reach: number;
}

/**
 * A ramp from a pin hole toward its string's place on the saddle. Its floor is the plane through (0, top − depth) and
 * (length, topAtEnd) in (s, z), s measured from the pin's centre along `direction`; flat sides `width` apart.
 */
export interface Channel {
  readonly at: Point;
  /** Unit vector in plan. */
  readonly direction: Point;
  readonly width: number;
  /** The cut in (s, z), closed, counter-clockwise: start wall, floor carried on above the surface, lid above the top. */
  readonly outline: readonly Point[];
  /** s at which the cut ends, in the air above the surface. */
  readonly reach: number;
  /** s beyond which it meets no wood: past `length` on the higher side of the crown. */
  readonly ends: number;
}
