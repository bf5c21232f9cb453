import { crownRadius, drop } from '../../../models/curves/profile.ts';
import { floorOver, handSign, type SlotFrame, slotFloor, slotToPart } from '../../../models/curves/slot.ts';
import { underside, undersideHeight } from '../../../models/curves/underside.ts';
import type { Design } from '../../design/design.ts';
import { type SolvedDepth, slotDepthFor } from '../slotDepthFor.ts';
import type { HeightFit } from './heightFit.ts';
import { rounded } from './rounded.ts';

/** Steps along the slot in which the least wood under it is looked for. */
const STEPS = 48;

/**
 * The slot's depth by rule, mm: the share of the saddle that is wanted in the wood under every string, the wanted wood left under the slot.
 *
 * @param design with thickness, slot angle and set-back as they are used
 */
export function depthFit(
  design: Design,
  places: readonly number[],
  { undersides, thickness }: HeightFit,
): SolvedDepth {
  const frame = slotAtNoDepth(design);
  const crown = crownRadius(design);
  const needs = places.map((x, i) => {
    const top = thickness - drop(crown, x);
    return {
      showing: (undersides[i] as number) - top,
      shallower: floorOver(frame, thickness, x) - top,
    };
  });
  const solved = slotDepthFor({
    showings: needs.map(({ showing }) => showing),
    shallower: needs.map(({ shallower }) => shallower),
    woodAtNoDepth: woodAtNoDepth(design, frame, thickness),
    wood: design.saddle.woodUnder,
    held: design.limits.held,
    tilt: design.saddle.tilt,
  });
  // rounded up where the saddle's hold governs, so that rounding doesn't break it
  const held = solved.depth === solved.forHold;
  return { ...solved, depth: held ? Math.ceil(solved.depth * 1e4) / 1e4 : rounded(solved.depth) };
}

function slotAtNoDepth(design: Design): SlotFrame {
  const { saddle } = design;
  return {
    angle: (handSign(design) * saddle.angle * Math.PI) / 180,
    tilt: (saddle.tilt * Math.PI) / 180,
    depth: 0,
    floorRadius: saddle.floor === 'parallel' ? crownRadius(design) : undefined,
  };
}

/** Least height of such a slot's floor over the glue face, along both its walls. */
function woodAtNoDepth(design: Design, frame: SlotFrame, thickness: number): number {
  const { saddle, top } = design;
  const face = underside(design);
  const half = (saddle.ends === 'open' ? top.block : saddle.slotLength) / 2;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= STEPS; i++) {
    const u = half * ((2 * i) / STEPS - 1);
    for (const v of [-saddle.slotWidth / 2, saddle.slotWidth / 2]) {
      const [x, y, z] = slotToPart(frame, thickness, u, v, slotFloor(frame, u));
      least = Math.min(least, z - undersideHeight(face, x, y));
    }
  }
  return least;
}
