import type { Design } from '../../design/design.ts';
import { FIELDS } from '../../design/fields.ts';
import { acrossStrings } from '../acrossStrings.ts';
import { type CorrectedSaddle, correctedSaddle } from '../correctedSaddle.ts';
import { correctedSetback } from '../correctedSetback.ts';
import type { SaddleStand } from '../saddleStand.ts';
import type { Crown } from './crowns.ts';
import type { Fit } from './placeDesign.ts';

/** What the finished guitar's own measures turn into, for each string. */
export interface MeasuredAgain {
  /** Set-backs that bring the 12th frets in tune, mm; undefined where no cents were measured, or they were misread. */
  readonly setbacks: readonly (number | undefined)[];
  /** Whether cents were measured that no set-back which a saddle can have would cure: something was misread. */
  readonly misread: readonly boolean[];
  /** What the saddle must become; empty unless the action was measured at both outer strings. */
  readonly saddles: readonly CorrectedSaddle[];
}

/** Corrected set-backs and saddle heights from the cents and the action that the finished guitar shows. */
export function measuredAgain(
  { action, guitar, saddle }: Design,
  { strings, slot }: Fit,
  crowns: readonly Crown[],
  stands: readonly SaddleStand[],
): MeasuredAgain {
  const places = strings.map(({ x }) => x);
  const outer = outerActions(action.measured);
  const measured = outer ? acrossStrings(places, outer.treble, outer.bass) : [];
  const wanted = acrossStrings(places, action.treble, action.bass);
  const setbacks = crowns.map(({ setback }, i) => {
    const cents = action.cents[i];
    const nutSetback = slot.wanted[i]?.nutMm ?? 0;
    return cents === undefined ? undefined : possible({ scale: guitar.scale, setback, nutSetback, cents });
  });
  return {
    setbacks,
    misread: setbacks.map((setback, i) => setback === undefined && action.cents[i] !== undefined),
    saddles: measured.map((now, i) =>
      correctedSaddle({
        measured: now,
        wanted: wanted[i] as number,
        height: stands[i]?.height ?? 0,
        showing: stands[i]?.showing ?? 0,
        tilt: saddle.tilt,
      }),
    ),
  };
}

/**
 * The action as measured at the two outer strings, mm: the first entry and the last, so that a list of one for each
 * string reads rightly too; undefined unless both are given.
 */
export function outerActions(
  measured: readonly (number | undefined)[],
): { readonly treble: number; readonly bass: number } | undefined {
  if (measured.length < 2) return undefined;
  const [treble, bass] = [measured[0], measured[measured.length - 1]];
  return treble === undefined || bass === undefined ? undefined : { treble, bass };
}

/** A corrected set-back that a saddle can have, mm; undefined for one so far off that something was misread. */
function possible(note: Parameters<typeof correctedSetback>[0]): number | undefined {
  const { min, max } = FIELDS.strings.setbacks;
  try {
    const setback = correctedSetback(note);
    return setback >= min && setback <= max ? setback : undefined;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
