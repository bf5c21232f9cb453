import type { Job } from './job.ts';

/** How a router jig is set for one saddle slot. mm and degrees. */
export interface SlotJig {
  /** The slot's angle, without its sign. */
  readonly shimAngle: number;
  /** What the shim rises over the jig's length. */
  readonly shimHeight: number;
  /** At which end of the bridge the shim is thick; undefined for a slot that is square to the centre line. */
  readonly thickEnd: 'treble' | 'bass' | undefined;
  /** What is cut: the design's width, or a cutter's that is hardly narrower. */
  readonly width: number;
  /** From the slot's middle line to the fence, on the front side, for the first pass. */
  readonly fence: number;
  /** Passes side by side: 1 for a cutter as wide as the slot. */
  readonly sidePasses: number;
  /** What is put between fence and base, added once a further side pass. */
  readonly sideStrip: number;
  /** From the slot's middle, along it, to the stop at either end. */
  readonly stop: number;
  /** How far a stop stands beyond the slot's end; undefined for a slot that runs out. */
  readonly stopBeyond: number | undefined;
}

/** A cutter narrower than the slot by less, mm, cuts it in one pass, and the saddle is fitted to it: common practice. */
const NEARLY = 0.05;

/**
 * Derived, plane geometry. The cutter turns in the middle of a base that slides along a fence parallel to the slot, so a
 * pass lies half the base from the fence. Stops are set for the base's edge: the cutter's edge reaches the slot's end when
 * its centre is half a cutter short of it, and the base's edge is then half a base further; for a slot that runs out its
 * centre goes to the end. The bridge is turned under the fence by a shim between the jig's rail and one of its edges.
 */
export function slotJig(job: Job): SlotJig {
  const { design, curves, workshop } = job;
  const { slot } = curves;
  const { cutter, baseWidth, jigLength, shimSide } = workshop;
  const width = slot.width - cutter < NEARLY ? cutter : slot.width;
  const spare = width - cutter;
  // every pass overlaps the one before, if by a hair
  const sidePasses = spare === 0 ? 1 : 1 + Math.ceil(spare / cutter - 1e-9);
  const short = slot.roundEnds ? cutter / 2 : 0;
  const { angle } = design.saddle;
  // along the front edge the gap to the stop is widest where the slot comes nearest to that edge
  const near = angle > 0 ? 'treble' : 'bass';
  const far = near === 'treble' ? 'bass' : 'treble';
  return {
    shimAngle: Math.abs(angle),
    shimHeight: jigLength * Math.tan((Math.abs(angle) * Math.PI) / 180),
    thickEnd: angle === 0 ? undefined : shimSide === 'front' ? near : far,
    width,
    fence: baseWidth / 2 + spare / 2,
    sidePasses,
    sideStrip: sidePasses === 1 ? 0 : spare / (sidePasses - 1),
    stop: slot.halfLength - short + baseWidth / 2,
    stopBeyond: slot.roundEnds ? baseWidth / 2 - short : undefined,
  };
}

/** Fewest passes in depth, and the least worth a pass of its own, mm: common practice. */
const [FEWEST, LEAST_PASS] = [4, 0.5];

/** Equal passes in depth, none deeper than `greatest`, mm: about 4 to 6 for a usual slot. */
export function depthPasses(
  total: number,
  greatest: number,
): { readonly passes: number; readonly step: number } {
  const usual = Math.min(FEWEST, Math.max(1, Math.floor(total / LEAST_PASS)));
  const passes = Math.max(Math.ceil(total / greatest - 1e-9), usual);
  return { passes, step: total / passes };
}

/**
 * Depth of the slot from where a flat-ended cutter first touches the blank's flat face in its first side pass, mm along
 * the walls: on a bed tilted for a slot that leans, the cutter's edge toward the tail touches first. Derived.
 *
 * @param total depth from the blank's face in the slot's middle
 */
export function depthFromTouch(job: Job, total: number): number {
  const backEdge = slotJig(job).width / 2 - job.workshop.cutter;
  return total - backEdge * Math.tan(job.curves.slot.tilt);
}
