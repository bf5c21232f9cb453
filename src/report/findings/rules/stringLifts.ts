import { said } from '../../said.ts';
import { isUnder, nameStrings, stringsWhere } from '../ofStrings.ts';
import { alongString } from '../places.ts';
import { rule } from '../rule.ts';

export const stringLifts = rule({
  id: 'string-lifts',
  about: 'fit',
  watches: 'Every string bears down on the saddle.',
  judge: (judged) => {
    const angle = (i: number) => judged.report.breaks[i]?.over?.angle ?? 1;
    const lifted = stringsWhere(judged, (i) => angle(i) <= 0 && !isUnder(judged, i));
    if (lifted.length === 0) return undefined;
    const least = Math.min(...lifted.map(angle));
    return {
      severity: 'error',
      text: `The saddle doesn’t bear ${nameStrings(judged, lifted)}: the break angle falls to ${said(least, '°')}, and must be above 0. More showing, or pins closer behind the slot, mends it.`,
      found: said(least, '°'),
      limit: 'above 0°',
      source: 'Follows from the heights of crown and hole.',
      path: 'saddle.showing',
      place: lifted.map((i) => alongString(judged, i)),
      mends: ['saddle.showing', 'pins.behindSlot', 'top.thickness'],
    };
  },
});
