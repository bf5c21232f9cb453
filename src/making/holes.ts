import type { Design } from '../design/design.ts';

/** How a pin hole's bevel and taper are cut. mm */
export interface HoleCuts {
  /** Width in plan of the bevel's ring in the drilled hole, and of what the reamer leaves of it. */
  readonly ring: { readonly drilled: number; readonly reamed: number };
  /** Diameter where a reamed hole meets its bevel, the ring's inside; undefined without a bevel or without a taper. */
  readonly inside: number | undefined;
  /** Diameter to countersink to on a surface of which so much comes off in finishing: that the wanted one is left. */
  bevelOn(left: number): number;
  /** Depth of the countersink's foot under the finished surface. */
  readonly foot: number;
  /** How far the reamer goes on from where it first touches; 0 where it leaves the hole as drilled. */
  readonly travel: number;
  /** Diameter that a millimetre of depth adds: 2·tan(a/2). */
  readonly taper: number;
}

/** A reamer that would go on by less, mm, leaves the hole as drilled. */
const LEAST_TRAVEL = 0.05;

/**
 * Derived, plane geometry of cones on one axis. A reamer widens the hole, never the bevel's outside: the ring is narrowed
 * from within. Its taper grows by 2·tan(a/2) of diameter a millimetre of depth; it first touches where the hole is
 * narrowest and highest: at the countersink's foot, or at the surface without one.
 */
export function holeCuts({ pins }: Pick<Design, 'pins'>): HoleCuts {
  const { drill, mouth, bevelDiameter } = pins;
  const taper = 2 * Math.tan((pins.taper * Math.PI) / 360);
  const bevelled = pins.bevel === 'cut';
  // diameter a millimetre of depth
  const flare = bevelled ? 2 * Math.tan((pins.bevelAngle * Math.PI) / 360) : 0;
  const foot = bevelled ? (bevelDiameter - drill) / flare : 0;
  const onward = taper > 0 ? (mouth - drill) / taper - foot : 0;
  const travel = onward > LEAST_TRAVEL ? onward : 0;
  // where bevel and taper meet under the surface
  const met =
    bevelled && travel > 0 ? bevelDiameter - (flare * (bevelDiameter - mouth)) / (flare - taper) : drill;
  return {
    ring: {
      drilled: bevelled ? (bevelDiameter - drill) / 2 : 0,
      reamed: bevelled ? (bevelDiameter - Math.max(drill, met)) / 2 : 0,
    },
    inside: bevelled && travel > 0 ? Math.max(drill, met) : undefined,
    bevelOn: (left) => bevelDiameter + flare * left,
    foot,
    travel,
    taper,
  };
}
