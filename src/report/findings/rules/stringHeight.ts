import { above, below, fromTo, mm } from '../../said.ts';
import { nameStrings, stringsWhere } from '../ofStrings.ts';
import { alongString } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';

export const stringHeight = rule({
  id: 'string-height',
  about: 'fit',
  watches: 'How high the strings pass over the soundboard at the saddle.',
  judge: (judged) => {
    const { stringLeast: least, stringMost: most } = judged.accepted.design.limits;
    const height = (i: number) => judged.report.crowns[i]?.height ?? 0;
    const low = stringsWhere(judged, (i) => below(height(i), least));
    const high = stringsWhere(judged, (i) => above(height(i), most));
    if (low.length + high.length === 0) return undefined;
    const lowest = Math.min(...low.map(height));
    const highest = Math.max(...high.map(height));
    const lines = [
      low.length > 0 &&
        `From the soundboard it is only ${mm(lowest)} to ${nameStrings(judged, low)}: little room for a picking hand, and little leverage to drive the top.`,
      high.length > 0 &&
        `From the soundboard it is up to ${mm(highest)} to ${nameStrings(judged, high)}: the higher, the more the strings twist the bridge forward and belly the top.`,
    ].filter((one) => one !== false);
    return {
      severity: 'warning',
      text: `${lines.join(' ')} That follows from how the neck is set, not from the bridge.`,
      found: [low.length > 0 && mm(lowest), high.length > 0 && mm(highest)]
        .filter((one) => one !== false)
        .join(' and '),
      limit: fromTo(least, most, 'mm'),
      source: PRACTICE,
      path: judged.accepted.design.action.planeBy === 'neck' ? 'action.neckAngle' : 'action.planeHeight',
      limitPath: high.length > 0 ? 'limits.stringMost' : 'limits.stringLeast',
      place: [...low, ...high].map((i) => alongString(judged, i)),
      // what was measured of a guitar is no knob: nothing of the bridge moves its strings
      mends: [],
    };
  },
});
