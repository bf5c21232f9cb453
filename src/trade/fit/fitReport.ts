import type { Curves } from '../../../models/curves/curves.ts';
import type { Design } from '../../design/design.ts';
import { breaks, type StringBreak } from './breaks.ts';
import { type Crown, crowns } from './crowns.ts';
import { type MeasuredAgain, measuredAgain } from './measuredAgain.ts';
import type { Fit } from './placeDesign.ts';
import { type SaddleFit, saddleFit } from './saddleFit.ts';

/** All that is said of how a drawn bridge fits its guitar. */
export interface FitReport {
  readonly crowns: readonly Crown[];
  readonly saddle: SaddleFit;
  readonly breaks: readonly StringBreak[];
  readonly measured: MeasuredAgain;
}

export function fitReport(design: Design, curves: Curves, fit: Fit): FitReport {
  const made = crowns(design, fit);
  const saddle = saddleFit(design, curves, fit);
  const broken = breaks(design, curves, fit, made);
  const measured = measuredAgain(design, fit, made, saddle.stands);
  return {
    crowns: made,
    saddle,
    breaks: broken,
    measured,
  };
}
