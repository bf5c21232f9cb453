import type { Point } from '../../../models/curves/segment.ts';
import { handSign } from '../../../models/curves/slot.ts';
import type { Design } from '../../design/design.ts';
import { centsByFret } from '../centsError.ts';
import { crownPlace } from '../crownPlace.ts';
import { crownReach } from '../slotResiduals.ts';
import type { Fit } from './placeDesign.ts';

/** Where the saddle's crown stands under one string. */
export interface Crown {
  /** In plan, mm. */
  readonly at: Point;
  /** How far it is filed from the slot's middle, mm; positive away from the nut. */
  readonly filed: number;
  /** Its set-back, and its height over the glue plane, mm. */
  readonly setback: number;
  readonly height: number;
  /** Errors at frets 1 to 12 without any compensation, on the slot's middle, and where it stands, cents. */
  readonly cents: {
    readonly bare: readonly number[];
    readonly onSlot: readonly number[];
    readonly filed: readonly number[];
  };
}

/** The crown under each string: on the slot's middle, or filed toward what the string asks for as far as the saddle allows. */
export function crowns(
  { saddle, guitar, ...design }: Design,
  { strings, slot, height }: Fit,
): readonly Crown[] {
  const reach =
    saddle.filed === 'each' ? crownReach({ widthMm: saddle.slotWidth, marginMm: saddle.crownMargin }) : 0;
  const angle = handSign({ ...design, guitar, saddle }) * saddle.angle;
  return strings.map(({ x }, i) => {
    const residual = slot.residuals[i];
    const wanted = slot.wanted[i];
    if (!residual || !wanted) throw new Error('a string without its residual');
    const filed = Math.max(-reach, Math.min(reach, residual.residualMm));
    const setback = residual.onSlotMm + filed;
    const z = height.undersides[i] as number;
    const { nutMm } = wanted;
    return {
      at: crownPlace(x, angle, -filed, saddle.tilt, z - height.thickness),
      filed,
      setback,
      height: z,
      cents: {
        bare: centsByFret(wanted.setup, { saddleMm: 0, nutMm: 0 }),
        onSlot: residual.cents,
        filed: centsByFret(wanted.setup, { saddleMm: setback, nutMm }),
      },
    };
  });
}
