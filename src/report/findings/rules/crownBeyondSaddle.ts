import { crownReach } from '../../../trade/slotResiduals.ts';
import { mm } from '../../said.ts';
import type { Judged } from '../finding.ts';
import { nameStrings, stringsWhere } from '../ofStrings.ts';
import { saddleUnder } from '../places.ts';
import { rule } from '../rule.ts';

/** A plain B beside a wound G belongs less than this off a straight slot, mm; more has another cause. A level of our own. */
const FAR_OFF = 3;

export const crownBeyondSaddle = rule({
  id: 'crown-beyond-saddle',
  about: 'fit',
  watches: 'The saddle is wide enough to file every crown to where its string plays in tune.',
  judge: (judged) => {
    const { fit, design } = judged.accepted;
    const { slotWidth: widthMm, crownMargin: marginMm, filed } = design.saddle;
    const { residuals } = fit.slot;
    const beyond = filed === 'each' ? stringsWhere(judged, (i) => residuals[i]?.filable === false) : [];
    if (beyond.length === 0) return undefined;
    const most = Math.max(...beyond.map((i) => Math.abs(residuals[i]?.residualMm ?? 0)));
    const far = most > FAR_OFF;
    const usual = !far && !bySet(judged) && beyond.every((i) => isBesideOther(judged, i));
    return {
      severity: far ? 'warning' : 'note',
      text: `The crown under ${nameStrings(judged, beyond)} belongs up to ${mm(most)} off the slot’s middle, farther than this saddle is wide: it is filed as far as it goes. ${usual ? 'That is usual where a plain string stands beside a wound one; a published blind test found no significant difference between straight and compensated saddles.' : 'Look at the strings, their notes, the action and the slot’s angle.'}`,
      found: `${mm(most)} off the middle`,
      limit: `at most ${mm(crownReach({ widthMm, marginMm }))} on a saddle of this width`,
      source: usual
        ? 'Mottola, Blind Listening Evaluation of Steel String Acoustic Guitar Compensation Strategies (abstract). What is usual is common practice.'
        : `Follows from slot and strings. That ${mm(FAR_OFF)} off is far is our own level, no source.`,
      path: 'saddle.slotWidth',
      place: beyond.map((i) => saddleUnder(judged, i)),
      // the saddle is filed as far as it goes: that is the mending
      mends: [],
    };
  },
});

/** Whether the slot lies where somebody set it: strings may then belong off it for that alone. */
function bySet({ accepted: { fit } }: Judged): boolean {
  return fit.solved['saddle.angle'].by === 'set' || fit.solved['saddle.setback'].by === 'set';
}

/** Whether a plain string has a wound neighbour, or a wound one a plain neighbour. */
function isBesideOther({ accepted: { fit } }: Judged, i: number): boolean {
  const wound = (k: number) => fit.strings[k]?.spec.wound;
  return [i - 1, i + 1].some((k) => wound(k) !== undefined && wound(k) !== wound(i));
}
