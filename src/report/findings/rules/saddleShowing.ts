import { above, below, fromTo, mm } from '../../said.ts';
import { isUnder, nameStrings, stringsWhere } from '../ofStrings.ts';
import { saddleUnder } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';

export const saddleShowing = rule({
  id: 'saddle-showing',
  about: 'fit',
  watches: 'What shows of the saddle over the bridge’s top under every string.',
  judge: (judged) => {
    const { showingLeast: least, showingMost: most } = judged.accepted.design.limits;
    const showing = (i: number) => judged.report.saddle.stands[i]?.showing ?? 0;
    const low = stringsWhere(judged, (i) => !isUnder(judged, i) && below(showing(i), least));
    const high = stringsWhere(judged, (i) => above(showing(i), most));
    const wrong = [...low, ...high];
    if (wrong.length === 0) return undefined;
    const lowest = Math.min(...low.map(showing));
    const highest = Math.max(...high.map(showing));
    const said = [
      low.length > 0 &&
        `The saddle shows only ${mm(lowest)} under ${nameStrings(judged, low)}: little is left to file when the action is lowered, and the strings turn down little behind it.`,
      high.length > 0 &&
        `The saddle shows up to ${mm(highest)} under ${nameStrings(judged, high)}: the higher it stands, the harder the strings lever it against the slot.`,
    ];
    return {
      severity: 'warning',
      text: said.filter((one) => one !== false).join(' '),
      found: [low.length > 0 && mm(lowest), high.length > 0 && mm(highest)]
        .filter((one) => one !== false)
        .join(' and '),
      limit: fromTo(least, most, 'mm'),
      source: PRACTICE,
      path: 'saddle.showing',
      limitPath: high.length > 0 ? 'limits.showingMost' : 'limits.showingLeast',
      place: wrong.map((i) => saddleUnder(judged, i)),
      mends: ['saddle.showing', 'top.thickness'],
    };
  },
});
