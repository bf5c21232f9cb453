import type { Design } from '../../design/design.ts';
import type { Setback } from '../centsError.ts';
import type { ClampedEnds } from '../endCondition.ts';
import type { EndHeights } from '../endHeights.ts';
import { type IntonationSetup, intonationSetup } from '../intonationSetup.ts';
import { setbackInTune } from '../setbackInTune.ts';
import { setbackLeastSquares } from '../setbackLeastSquares.ts';
import type { TunedString } from './tunedStrings.ts';

/** What intonation asks of one string. */
export interface WantedSetback extends Setback {
  readonly setup: IntonationSetup;
  /** Whether the builder measured it; else computed. */
  readonly measured: boolean;
}

/** The set-back that each string asks for by the design's rule (I4); a measured one goes before. */
export function wantedSetbacks(
  { guitar, strings, saddle, action }: Design,
  tuned: readonly TunedString[],
  heights: readonly EndHeights[],
  firmEnds: ClampedEnds = saddle.firmEnds,
): readonly WantedSetback[] {
  const nut = action.nut === 'set' ? action.nutSetback : 0;
  return tuned.map(({ spec, tensionN }, i) => {
    const modulusPa = strings.modulus * 1e9;
    const tense = { string: spec, tensionN, modulusPa };
    const setup = intonationSetup(tense, guitar.scale, heights[i] as EndHeights, firmEnds);
    const computed =
      action.nut === 'solved'
        ? setbackLeastSquares(setup, 'solved')
        : saddle.rule === 'frets'
          ? setbackLeastSquares(setup, nut)
          : setbackInTune(setup, nut);
    const measured = strings.setbacks[i];
    return {
      setup,
      nutMm: computed.nutMm,
      saddleMm: measured ?? computed.saddleMm,
      measured: measured !== undefined,
    };
  });
}
