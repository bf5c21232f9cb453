import type { FitReport } from '../../trade/fit/fitReport.ts';

/** Why a string has no load on the saddle, in words. */
export function whyNoLoad({ saddle, breaks }: Pick<FitReport, 'saddle' | 'breaks'>, i: number): string {
  const over = breaks[i]?.over;
  const stand = saddle.stands[i];
  if (!over) return 'its pin doesn’t lie behind the slot';
  if (over.angle <= 0) return 'it doesn’t break over the saddle';
  if (!stand || stand.inSlot <= 0) return 'it passes beside the slot, where no saddle stands';
  return 'its crown lies under the bridge’s top, so the saddle doesn’t bear it';
}
