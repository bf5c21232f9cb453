import { handSign } from '../../models/curves/slot.ts';
import { massG, surfaceFigures } from '../../models/surface/figures.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { centsError } from '../trade/centsError.ts';
import { actionOf, type EndHeights } from '../trade/endHeights.ts';
import { crowns } from '../trade/fit/crowns.ts';
import { asMade } from './asMade.ts';
import { jobByHand } from './jobByHand.ts';
import { judgeMeasured } from './judgeMeasured.ts';
import { madeUp } from './madeUp.ts';
import type { Meaning, MeaningFigures, Measured, StringMeaning } from './meaning.ts';
import { meaningTables } from './meaningTables.ts';
import { meaningText } from './meaningText.ts';
import { type MeasuredOff, measuredOff } from './measuredOff.ts';
import { isPlausible } from './plausible.ts';
import { slotAsCut } from './slotAsCut.ts';
import type { Step } from './step.ts';
import type { Workshop } from './workshop.ts';

/**
 * What measured values mean for action, intonation and strength. Derived: a string goes up with the bridge's top and what
 * shows of the saddle (or with the slot's floor and the saddle's height), the action at the 12th fret by half of it
 * (I3); cents by the error of a fretted note (I2) with crown and height where they now are; a beam's stiffness goes
 * with its thickness cubed. Values that are not told are taken to be as designed. Throws `RangeError` for what no such
 * setting can be.
 */
export function whatItMeans(accepted: AcceptedDesign, workshop: Workshop, measured: Measured): Meaning {
  const designed = jobByHand(accepted, workshop);
  const steps = madeUp(designed, accepted, refuseOdd(designed, measured));
  const off = measuredOff(designed, measured);
  const { design, curves } = accepted;
  const made = asMade(off, curves.slot.tilt);
  const { back, turn } = slotAsCut(accepted, workshop, off);
  const grams = measured['check.mass'];
  const { thickness } = design.top;
  const figures: MeaningFigures = {
    strings: stringsOf(accepted, workshop, steps, off),
    made,
    slot: { back, turn },
    stiffness: (Math.max(0, thickness + made.thicker) / thickness) ** 3,
    woodUnder: measured['check.wood-under'] ?? woodLeft(designed, off, made, Math.cos(curves.slot.tilt)),
    density: grams === undefined ? undefined : grams / massG(surfaceFigures(curves, 'drilled').volumeMm3, 1),
    outside: steps
      .flatMap(({ settings }) => settings)
      .filter((one) => {
        const value = measured[one.id];
        return value !== undefined && judgeMeasured(one, value).within === false;
      }).length,
  };
  return {
    ...figures,
    text: meaningText(figures, accepted, { steps: designed, measured, workshop }),
    tables: meaningTables(figures),
  };
}

/** The same values; throws for the first that is none. */
function refuseOdd(steps: readonly Step[], measured: Measured): Measured {
  for (const { settings } of steps) {
    for (const one of settings) {
      const value = measured[one.id];
      if (value !== undefined && !isPlausible(one, value))
        throw new RangeError(`${one.id}: ${value} is not a measured value`);
    }
  }
  return measured;
}

function stringsOf(
  accepted: AcceptedDesign,
  workshop: Workshop,
  steps: readonly Step[],
  off: MeasuredOff,
): readonly StringMeaning[] {
  const { design, curves, fit } = accepted;
  const { angle, tilt } = curves.slot;
  const { thicker, deeper } = asMade(off, tilt);
  const slot = slotAsCut(accepted, workshop, off);
  const leaning = tiltAsCut(design.footprint.depthCentre, tilt, off);
  const hand = handSign(design);
  const wanted = new Map(steps.flatMap(({ settings }) => settings.map(({ id, value }) => [id, value])));
  return crowns(design, fit).map((crown, i): StringMeaning => {
    const showing = off(`saddle.showing-${i + 1}`);
    const height = off(`saddle.height-${i + 1}`) ?? 0;
    const rise = thicker + Math.cos(tilt) * (showing ?? height - deeper);
    const { x = 0, note = '' } = fit.strings[i] ?? {};
    const { setup, nutMm } = fit.slot.wanted[i] ?? {};
    const heights = fit.heights[i] as EndHeights;
    const asDesigned = actionOf(heights).at12 + fit.height.tooHigh / 2;
    // filed further off the middle, on the side that it was filed to
    const filed = Math.sign(crown.filed) * (off(`saddle.filed-${i + 1}`) ?? 0);
    // a leaning saddle carries its crown back as it rises
    const over = crown.height - design.top.thickness;
    const leans = ((over + rise) * Math.tan(leaning) - over * Math.tan(tilt)) / Math.cos(angle);
    const cents = (back: number): number => {
      if (!setup) return 0;
      const raised = { ...setup, heights: { ...heights, saddle: heights.saddle + rise } };
      return centsError(raised, 12, crown.setback + back + leans + filed, nutMm);
    };
    // to the treble of the middle the slot that is turned further comes nearer to the nut
    const turned = slot.turnedBack(hand * x);
    return {
      note,
      rise,
      action: { designed: asDesigned, now: asDesigned + rise / 2 },
      saddle: {
        showing: wanted.get(`saddle.showing-${i + 1}`) as number,
        height: wanted.get(`saddle.height-${i + 1}`) as number,
      },
      cents: {
        designed: crown.cents.filed[11] ?? 0,
        bySlot: cents(turned),
        byEdge: cents(turned + slot.back),
      },
    };
  });
}

/** How the slot leans as it was cut, radians: as measured, or as the bed was set. */
function tiltAsCut(depthCentre: number, tilt: number, off: MeasuredOff): number {
  const [more, higher] = [off('slot.tilt'), off('slot.bed-rise')];
  if (more !== undefined) return tilt + (more * Math.PI) / 180;
  return higher === undefined ? tilt : Math.atan(Math.tan(tilt) + higher / depthCentre);
}

/** Wood under the slot where it is least: by its depth in the middle, or at its ends where that is more off. */
function woodLeft(
  steps: readonly Step[],
  off: MeasuredOff,
  { thicker, deeper }: MeaningFigures['made'],
  lean: number,
): number {
  const designed = steps.flatMap(({ settings }) => settings).find(({ id }) => id === 'check.wood-under');
  const ends = off('crown.left-ends', 'slot.depth-ends') ?? deeper;
  return (designed?.value ?? 0) + thicker - lean * Math.max(deeper, ends);
}
