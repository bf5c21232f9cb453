import { above, mm, plain } from '../../said.ts';
import { alongString } from '../places.ts';
import { rule } from '../rule.ts';

export const actionOtherwise = rule({
  id: 'action-otherwise',
  about: 'fit',
  watches: 'Thickness and saddle together give the action that is asked for.',
  judge: (judged) => {
    const { design, fit } = judged.accepted;
    // half a millimetre of action is a millimetre of saddle
    const off = fit.height.tooHigh / 2;
    if (!above(Math.abs(off), 0)) return undefined;
    const { treble, bass } = design.action;
    return {
      severity: 'note',
      text: `Thickness and showing are both set by hand: the action comes out ${mm(Math.abs(off))} ${off > 0 ? 'higher' : 'lower'} at the 12th fret than the ${plain(treble)} and ${mm(bass)} asked for.`,
      found: `${mm(Math.abs(off))} ${off > 0 ? 'higher' : 'lower'}`,
      limit: 'as asked for',
      source: 'Follows from the heights: half a millimetre of action is a millimetre of saddle.',
      path: 'saddle.showing',
      place: fit.strings.map((_, i) => alongString(judged, i)),
      mends: ['saddle.showing', 'top.thickness'],
    };
  },
});
