import { mm } from '../../said.ts';
import { isUnder, nameStrings, stringsWhere } from '../ofStrings.ts';
import { alongString } from '../places.ts';
import { rule } from '../rule.ts';

export const stringUnderTop = rule({
  id: 'string-under-top',
  about: 'fit',
  watches: 'Every string passes over the bridge’s top.',
  judge: (judged) => {
    const under = stringsWhere(judged, (i) => isUnder(judged, i));
    if (under.length === 0) return undefined;
    const most = -Math.min(...under.map((i) => judged.report.saddle.stands[i]?.showing ?? 0));
    return {
      severity: 'error',
      text: `The action puts ${nameStrings(judged, under)} under the bridge’s top, by ${mm(most)} at most: a thinner bridge, more action or a rounder crown mends it.`,
      found: `${mm(most)} under the top`,
      limit: 'above the top',
      source: 'Follows from the heights of strings and top.',
      path: 'top.thickness',
      place: under.map((i) => alongString(judged, i)),
      mends: ['saddle.showing', 'top.thickness', 'action.treble', 'action.bass', 'top.crownRadius'],
    };
  },
});
