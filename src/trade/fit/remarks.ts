import type { Design } from '../../design/design.ts';
import { FIELDS } from '../../design/fields.ts';
import type { StringBreak } from './breaks.ts';
import type { MeasuredAgain } from './measuredAgain.ts';
import type { Fit } from './placeDesign.ts';
import type { SaddleFit } from './saddleFit.ts';

/** Something about the fit that a builder should know before cutting. */
export interface Remark {
  /** Stable, for programs. */
  readonly id:
    | 'string-under-top'
    | 'saddle-not-half-in'
    | 'steel-stress'
    | 'crown-beyond-saddle'
    | 'saddle-too-short'
    | 'string-over-wood'
    | 'string-lifts'
    | 'action-otherwise'
    | 'cents-misread';
  /** The field to look at. */
  readonly path: string;
  readonly text: string;
}

/** A plain B beside a wound G belongs so far off a straight slot, mm; more has another cause. Common practice. */
const USUAL_OFF = 3;

/** Steel that pulls beyond this share of 2 GPa, what string steel is stressed up to, is near its end. */
export const HIGH_STRESS = 1.1;

export function remarks(
  { saddle, action }: Design,
  fit: Fit,
  { stands, top, length }: SaddleFit,
  breaks: readonly StringBreak[],
  { misread }: Pick<MeasuredAgain, 'misread'>,
): readonly Remark[] {
  const out: Remark[] = [];
  const name = (i: number) => `string ${i + 1} (${fit.strings[i]?.note ?? ''})`;
  const each = <T>(list: readonly T[], wrong: (one: T, i: number) => boolean) =>
    list.flatMap((one, i) => (wrong(one, i) ? [i] : []));
  const names = (list: readonly number[]) => list.map(name).join(', ');

  const under = each(stands, ({ showing }) => showing < 0);
  if (under.length > 0) {
    const least = Math.min(...under.map((i) => stands[i]?.showing ?? 0));
    out.push({
      id: 'string-under-top',
      path: 'top.thickness',
      text: `The action puts ${names(under)} under the bridge’s top, by ${(-least).toFixed(2)} mm at most: a thinner bridge, more action or a rounder crown mends it.`,
    });
  }
  const shallow = each(stands, ({ half }) => !half);
  if (shallow.length > 0) {
    const most = Math.max(...shallow.map((i) => -(stands[i]?.margin ?? 0)));
    out.push({
      id: 'saddle-not-half-in',
      path: 'saddle.depth',
      text: `Less than half of the saddle stands in the wood under ${names(shallow)}: up to ${most.toFixed(2)} mm more shows than is held (common practice).`,
    });
  }
  const stressed = each(fit.strings, ({ stressShare }) => stressShare > HIGH_STRESS);
  if (stressed.length > 0) {
    const most = Math.max(...stressed.map((i) => fit.strings[i]?.stressShare ?? 0));
    out.push({
      id: 'steel-stress',
      path: 'strings.cores',
      text: `The core of ${names(stressed)} bears ${(2 * most).toFixed(2)} GPa at most, if the core is as thick as typed; string steel is stressed up to about 2 GPa (Zollner, Physics of the Electric Guitar §1.2), and this is said beyond ${(2 * HIGH_STRESS).toFixed(1)}. Measure the core; look at gauge and note.`,
    });
  }
  const beyond = saddle.filed === 'each' ? each(fit.slot.residuals, ({ filable }) => !filable) : [];
  if (beyond.length > 0) {
    const most = Math.max(...beyond.map((i) => Math.abs(fit.slot.residuals[i]?.residualMm ?? 0)));
    out.push({
      id: 'crown-beyond-saddle',
      path: 'saddle.slotWidth',
      text: `The crown under ${names(beyond)} belongs up to ${most.toFixed(2)} mm off the slot’s middle, farther than this saddle is wide: it is filed as far as it goes. ${most <= USUAL_OFF ? 'That is usual where a plain string stands beside a wound one; a published blind test found no significant difference between straight and compensated saddles.' : 'So far is not usual: look at the strings, their notes and the action.'}`,
    });
  }
  if (!top) {
    out.push({
      id: 'saddle-too-short',
      path: 'saddle.slotLength',
      text: `A saddle of ${length.toFixed(1)} mm has no top that carries all strings: lengthen the slot or narrow the spread.`,
    });
  }
  const over = each(breaks, ({ over }) => over === undefined || !over.straight);
  if (over.length > 0) {
    out.push({
      id: 'string-over-wood',
      path: 'pins.channel',
      text: `Wood stands between saddle and hole in the way of ${names(over)}: a channel, or pins further forward, lets a string go straight into its hole.`,
    });
  }
  const lifted = each(breaks, ({ over }, i) => (over?.angle ?? 1) <= 0 && !under.includes(i));
  if (lifted.length > 0) {
    const least = Math.min(...lifted.map((i) => breaks[i]?.over?.angle ?? 0));
    out.push({
      id: 'string-lifts',
      path: 'saddle.showing',
      text: `The saddle doesn’t bear ${names(lifted)}: the break angle falls to ${least.toFixed(2)}°, and must be above 0. More showing, or pins closer behind the slot, mends it.`,
    });
  }
  const { tooHigh } = fit.height;
  if (tooHigh !== 0) {
    const way = tooHigh > 0 ? 'higher' : 'lower';
    out.push({
      id: 'action-otherwise',
      path: 'saddle.showing',
      text: `Thickness and showing are both set by hand: the action comes out ${Math.abs(tooHigh / 2).toFixed(2)} mm ${way} at the 12th fret than the ${action.treble} and ${action.bass} asked for.`,
    });
  }
  const mistaken = each(misread, (one) => one);
  if (mistaken.length > 0) {
    const { min, max } = FIELDS.strings.setbacks;
    out.push({
      id: 'cents-misread',
      path: 'action.cents',
      text: `No set-back from ${min} to ${max} mm brings the measured cents of ${names(mistaken)} to 0: something was misread. Tune the open string and measure the 12th fret again.`,
    });
  }
  return out;
}
