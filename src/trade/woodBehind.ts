import { distance, type Point } from '../../models/curves/segment.ts';

/** Stretches into which the wood between slot and hole is cut: over a crown of 150 mm they sag by less than 1e-3 mm. */
const STRETCHES = 16;

/** How far behind the crown its own foot is taken to be, mm: no point of the wood may lie right under it. */
const UNDER_CROWN = 0.05;

/** A ramp cut from the pin hole toward the saddle, mm, as the channel's fields say. */
export interface Ramp {
  /** From the hole's middle to where it comes out of the top. */
  readonly length: number;
  /** At the hole's middle, under the top. */
  readonly depth: number;
}

/** What lies behind one string's crown. Millimetres and degrees. */
export interface Behind {
  /** The crown in plan (see `crownPlace`). */
  readonly crown: Point;
  /** The pin hole's middle in plan. */
  readonly pin: Point;
  /** Radius of the hole where the string comes out of it: with a bevel, the bevel's at the surface. */
  readonly holeRadius: number;
  /** As for `crownPlace`. */
  readonly slotAngle: number;
  readonly slotWidth: number;
  /** As for `crownPlace`. */
  readonly tilt: number;
  /** z of the uncut top over x. */
  readonly top: (x: number) => number;
  /** The string's channel, if there is one; the hole's radius is then the one in the channel. */
  readonly ramp: Ramp | undefined;
}

/**
 * The wood under one string from the slot's back edge to the front of its pin hole, as points (s, z) for `breakAngle`,
 * mm; s runs in plan from the crown toward the hole's middle. The channel's floor is the straight line from its depth
 * at the hole to the top at its length, as the curves draw it. Plane geometry.
 *
 * @throws RangeError when the hole's edge doesn't lie behind the slot's
 */
export function woodBehind(b: Behind): readonly Point[] {
  const far = distance(b.crown, b.pin);
  const direction: Point = [(b.pin[0] - b.crown[0]) / far, (b.pin[1] - b.crown[1]) / far];
  const angle = (b.slotAngle * Math.PI) / 180;
  const across = ([x, y]: Point) => y * Math.cos(angle) - x * Math.sin(angle);
  const tilt = (b.tilt * Math.PI) / 180;
  // a tilted slot is wider at the surface, and further forward where the crowned top lies lower
  const backEdge = b.slotWidth / 2 / Math.cos(tilt) + (b.top(b.crown[0]) - b.top(0)) * Math.tan(tilt);
  // a crown filed back, or leaning back, may overhang the slot's edge: then the wood begins beneath it
  const start = Math.max(UNDER_CROWN, (across(b.crown) + backEdge) / -across(direction));
  const entry = far - b.holeRadius;
  if (!(start < entry)) {
    throw new RangeError(
      `the hole’s edge, ${entry} mm behind the crown, must lie behind the slot’s (${start} mm)`,
    );
  }
  const topAt = (s: number) => b.top(b.crown[0] + direction[0] * s);
  const height = b.ramp ? withRamp(b.ramp, far, topAt) : topAt;
  const places = Array.from({ length: STRETCHES + 1 }, (_, i) => start + ((entry - start) * i) / STRETCHES);
  const rampStart = b.ramp && far - b.ramp.length;
  if (rampStart !== undefined && rampStart > start && rampStart < entry) places.push(rampStart);
  return places.sort((p, q) => p - q).map((s) => [s, height(s)]);
}

function withRamp(ramp: Ramp, far: number, topAt: (s: number) => number) {
  const low = topAt(far) - ramp.depth;
  const high = topAt(far - ramp.length);
  return (s: number) => Math.min(topAt(s), low + ((high - low) * (far - s)) / ramp.length);
}
