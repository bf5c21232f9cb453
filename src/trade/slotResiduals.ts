import { centsByFret, type Setback } from './centsError.ts';
import type { IntonationSetup } from './intonationSetup.ts';
import type { SlotLine } from './slotLine.ts';

/** A saddle's width, and what must stay between its crown and its edge, mm. */
export interface SaddleWidth {
  readonly widthMm: number;
  readonly marginMm: number;
}

/** How one string does on a straight slot. */
export interface SlotResidual {
  /** The set-back that this string has with its crown on the slot's middle, where that leans its lean counted, mm. */
  readonly onSlotMm: number;
  /** How far the crown must be filed to take the set-back it asks for, mm: positive away from the nut. */
  readonly residualMm: number;
  /** Errors at frets 1 to 12 with the crown on the slot's centre, cents. */
  readonly cents: readonly number[];
  readonly cents12: number;
  /** Whether the saddle is wide enough to file this string's crown. */
  readonly filable: boolean;
}

/** How far from a saddle's middle its crown can be filed, mm: width/2 − margin, never below 0 (I4). */
export function crownReach({ widthMm, marginMm }: SaddleWidth): number {
  return Math.max(0, widthMm / 2 - marginMm);
}

/**
 * What a straight slot leaves over for each string (I4): `wanted` are the set-backs from which the slot was made, or
 * with which it is compared, in its order; a string's nut stays as it is there.
 */
export function slotResiduals(
  setups: readonly IntonationSetup[],
  wanted: readonly Setback[],
  line: SlotLine,
  saddle: SaddleWidth,
): SlotResidual[] {
  const reach = crownReach(saddle);
  return setups.map((setup, i) => {
    const residualMm = line.residualsMm[i] ?? 0;
    const { saddleMm, nutMm } = wanted[i] ?? { saddleMm: 0, nutMm: 0 };
    const onSlotMm = saddleMm - residualMm;
    const cents = centsByFret(setup, { saddleMm: onSlotMm, nutMm });
    return {
      onSlotMm,
      residualMm,
      cents,
      cents12: cents[11] ?? 0,
      filable: Math.abs(residualMm) <= reach,
    };
  });
}
