import type { Design } from '../../design/design.ts';
import { acrossStrings } from '../acrossStrings.ts';
import { type CorrectedSaddle, correctedSaddle } from '../correctedSaddle.ts';
import { correctedSetback } from '../correctedSetback.ts';
import type { SaddleStand } from '../saddleStand.ts';
import type { Crown } from './crowns.ts';
import type { Fit } from './placeDesign.ts';

/** What the finished guitar's own measures turn into, for each string. */
export interface MeasuredAgain {
  /** Set-backs that bring the 12th frets in tune, mm; undefined where no cents were measured, or none would. */
  readonly setbacks: readonly (number | undefined)[];
  /** What the saddle must become; empty unless the action was measured at both outer strings. */
  readonly saddles: readonly CorrectedSaddle[];
}

/** Corrected set-backs and saddle heights from the cents and the action that the finished guitar shows. */
export function measuredAgain(
  { action, guitar }: Design,
  { strings, slot }: Fit,
  crowns: readonly Crown[],
  stands: readonly SaddleStand[],
): MeasuredAgain {
  const places = strings.map(({ x }) => x);
  const [treble, bass] = action.measured;
  const measured = treble === undefined || bass === undefined ? [] : acrossStrings(places, treble, bass);
  const wanted = acrossStrings(places, action.treble, action.bass);
  return {
    setbacks: crowns.map(({ setback }, i) => {
      const cents = action.cents[i];
      const nutSetback = slot.wanted[i]?.nutMm ?? 0;
      return cents === undefined ? undefined : possible({ scale: guitar.scale, setback, nutSetback, cents });
    }),
    saddles: measured.map((now, i) =>
      correctedSaddle({
        measured: now,
        wanted: wanted[i] as number,
        height: stands[i]?.height ?? 0,
        showing: stands[i]?.showing ?? 0,
      }),
    ),
  };
}

function possible(note: Parameters<typeof correctedSetback>[0]): number | undefined {
  try {
    return correctedSetback(note);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
