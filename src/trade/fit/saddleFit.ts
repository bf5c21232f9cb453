import type { Curves } from '../../../models/curves/curves.ts';
import type { Chain } from '../../../models/curves/segment.ts';
import { floorOver } from '../../../models/curves/slot.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import type { Design } from '../../design/design.ts';
import { type SaddleBlank, saddleBlank } from '../saddleBlank.ts';
import { type SaddleStand, saddleStand } from '../saddleStand.ts';
import { greatestHeight, saddleTop } from '../saddleTop.ts';
import type { Fit } from './placeDesign.ts';

/** The saddle that the fit asks for. */
export interface SaddleFit {
  /** Under each string. */
  readonly stands: readonly SaddleStand[];
  /** Its top in its own plane (along the slot, over the slot's floor at the middle), mm; undefined if it is too short. */
  readonly top: Chain | undefined;
  readonly blank: SaddleBlank | undefined;
  /** mm along the slot. */
  readonly length: number;
}

/** How the saddle stands in its slot under each string, its top's curve, and the piece to cut it from. */
export function saddleFit(
  { saddle, top }: Design,
  { profile, slot }: Curves,
  { strings, height }: Fit,
): SaddleFit {
  const floorAt = (x: number) => floorOver(slot, profile.thickness, x);
  const stands = strings.map(({ x }, i) =>
    saddleStand(height.undersides[i] as number, topHeight(profile, x), floorAt(x), saddle.tilt),
  );
  const length = saddle.ends === 'open' ? top.block / Math.cos(slot.angle) : saddle.slotLength;
  const middleFloor = floorAt(0);
  // a leaning saddle is longer than it is high
  const lean = Math.cos((saddle.tilt * Math.PI) / 180);
  const over = strings.map(({ x }, i) => ({
    x,
    height: ((height.undersides[i] as number) - middleFloor) / lean,
  }));
  const curve = attempt(() => saddleTop(over, height.fretboardRadius, saddle.angle, length));
  return {
    stands,
    top: curve,
    blank: curve && saddleBlank(length, saddle.slotWidth, greatestHeight(curve)),
    length,
  };
}

/** The geometry's own refusals (a saddle shorter than the spread, crowns that no arc joins) mean that there is none. */
function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
