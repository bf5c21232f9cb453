import type { FitReport } from '../../trade/fit/fitReport.ts';

/** Why a string has no load on the saddle, in words: the reason that is to be mended first. */
export function whyNoLoad({ saddle, breaks }: Pick<FitReport, 'saddle' | 'breaks'>, i: number): string {
  const over = breaks[i]?.over;
  const stand = saddle.stands[i];
  if (!over) return 'its pin doesn’t lie behind the slot';
  if (stand && stand.showing < 0) return 'its crown lies under the bridge’s top';
  if (over.angle <= 0) return 'it doesn’t break over the saddle';
  return 'the slot no longer runs in wood under it';
}
