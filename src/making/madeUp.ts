import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { signed } from '../report/said.ts';
import { roundedUp } from '../trade/roundedUp.ts';
import { asMade } from './asMade.ts';
import type { Measured } from './meaning.ts';
import { measuredOff } from './measuredOff.ts';
import type { Setting, Step } from './step.ts';
import { UNSEEN } from './unseen.ts';

/**
 * The steps with the saddle's heights wanted now: what the bridge came out too thin or too thick, and its slot too deep
 * or too shallow, the saddle makes up for, so that every string lies where it was designed. Derived: as much more shows
 * as the top lies lower, along the saddle; foot to crown changes by what the floor lies lower.
 */
export function madeUp(
  steps: readonly Step[],
  { curves }: AcceptedDesign,
  measured: Measured,
): readonly Step[] {
  const { tilt } = curves.slot;
  const { thicker, deeper } = asMade(measuredOff(steps, measured), tilt);
  if (Math.abs(thicker) < UNSEEN && Math.abs(deeper) < UNSEEN) return steps;
  const showing = -thicker / Math.cos(tilt);
  const height = showing + deeper;
  const changed = (one: Setting): Setting => {
    if (one.id.startsWith('saddle.showing-')) return moved(one, showing);
    if (one.id.startsWith('saddle.height-')) return moved(one, height);
    if (one.id === 'saddle.blank-height') {
      const up = moved(one, height);
      return { ...up, value: roundedUp(up.value, one.decimals) };
    }
    return one;
  };
  return steps.map((step) =>
    step.id === 'saddle' ? { ...step, settings: step.settings.map(changed) } : step,
  );
}

function moved(one: Setting, by: number): Setting {
  if (Math.abs(by) < UNSEEN) return one;
  return {
    ...one,
    value: one.value + by,
    formula: `${one.formula}, ${signed(by, 2)} for the bridge as measured`,
  };
}
