import { handSign } from '../../../models/curves/slot.ts';
import type { Design } from '../../design/design.ts';
import { LEAST_CLAMPED_ENDS } from '../endCondition.ts';
import type { EndHeights } from '../endHeights.ts';
import { type SlotLine, type SlotRule, type StringPlace, slotLine } from '../slotLine.ts';
import { type SlotResidual, slotResiduals } from '../slotResiduals.ts';
import { rounded } from './rounded.ts';
import type { TunedString } from './tunedStrings.ts';
import { type WantedSetback, wantedSetbacks } from './wantedSetbacks.ts';

/** Where the slot lies, and what it leaves over. Angles as a design has them: positive if the bass lies back. */
export interface SlotFit {
  readonly wanted: readonly WantedSetback[];
  /** What the strings ask for: each solved with the other as it is used. */
  readonly solvedAngle: number;
  readonly solvedSetback: number;
  /** The slot as it is used, partly or wholly set by hand. */
  readonly line: SlotLine;
  readonly residuals: readonly SlotResidual[];
  /** The same slot solved with ends that clamp least, α = 1: a lower bound. */
  readonly least: SlotLine;
}

/**
 * I4: the slot's place and angle from what the strings ask for; what is set by hand stays, the rest suits it.
 *
 * @param leans how far behind the slot's line on the top each string's crown stands because the saddle leans, mm
 */
export function slotFit(
  design: Design,
  tuned: readonly TunedString[],
  heights: readonly EndHeights[],
  leans: readonly number[],
): SlotFit {
  const { saddle } = design;
  const rule: SlotRule = saddle.line === 'squares' ? 'least-squares' : 'smallest-largest';
  const hand = handSign(design);
  const placesOf = (wanted: readonly WantedSetback[]) =>
    wanted.map(({ saddleMm }, i) => ({
      xMm: hand * (tuned[i] as TunedString).x,
      setbackMm: saddleMm - (leans[i] ?? 0),
    }));
  const wanted = wantedSetbacks(design, tuned, heights);
  const places = placesOf(wanted);
  const [setAngle, setSetback] = [
    saddle.angleBy === 'set' ? saddle.angle : undefined,
    saddle.setbackBy === 'set' ? saddle.setback : undefined,
  ];
  const solvedAngle = angleFor(places, rule, setSetback);
  const angleDeg = setAngle ?? solvedAngle;
  const solvedSetback = rounded(slotLine(places, rule, { angleDeg }).centreMm);
  const line = slotLine(places, rule, { angleDeg, centreMm: setSetback ?? solvedSetback });
  const setups = wanted.map(({ setup }) => setup);
  const width = { widthMm: saddle.slotWidth, marginMm: saddle.crownMargin };
  return {
    wanted,
    solvedAngle,
    solvedSetback,
    line,
    residuals: slotResiduals(setups, wanted, line, width),
    least: slotLine(placesOf(wantedSetbacks(design, tuned, heights, LEAST_CLAMPED_ENDS)), rule),
  };
}

/**
 * The angle that suits a set-back best. One that is set as it was solved keeps the angle it was solved with, where
 * rounding would else turn the slot by a ten-thousandth of a degree.
 */
function angleFor(places: readonly StringPlace[], rule: SlotRule, setSetback: number | undefined): number {
  const free = rounded(slotLine(places, rule).angleDeg);
  if (setSetback === undefined) return free;
  const suits = rounded(slotLine(places, rule, { angleDeg: free }).centreMm) === setSetback;
  return suits ? free : rounded(slotLine(places, rule, { centreMm: setSetback }).angleDeg);
}
