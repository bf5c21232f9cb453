import { crownReach } from '../../../trade/slotResiduals.ts';
import { nameStrings, stringsWhere } from '../ofStrings.ts';
import { saddleUnder } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';
import { mm } from '../said.ts';

/** A plain B beside a wound G belongs so far off a straight slot, mm; more has another cause. Common practice. */
const USUAL_OFF = 3;

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
    const usual = most <= USUAL_OFF;
    return {
      severity: usual ? 'note' : 'warning',
      text: `The crown under ${nameStrings(judged, beyond)} belongs up to ${most.toFixed(2)} mm off the slot’s middle, farther than this saddle is wide: it is filed as far as it goes. ${usual ? 'That is usual where a plain string stands beside a wound one; a published blind test found no significant difference between straight and compensated saddles.' : 'So far is not usual: look at the strings, their notes and the action.'}`,
      found: `${mm(most)} off the middle`,
      limit: `at most ${mm(crownReach({ widthMm, marginMm }))} on a saddle of this width`,
      source: usual
        ? 'Mottola, Blind Listening Evaluation of Steel String Acoustic Guitar Compensation Strategies (abstract). What is usual is common practice.'
        : PRACTICE,
      path: 'saddle.slotWidth',
      place: beyond.map((i) => saddleUnder(judged, i)),
      // the saddle is filed as far as it goes: that is the mending
      mends: [],
    };
  },
});
