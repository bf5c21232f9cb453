import { mm } from '../../said.ts';
import { nameStrings, stringsWhere } from '../ofStrings.ts';
import { alongString } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';

export const stringOverWood = rule({
  id: 'string-over-wood',
  about: 'fit',
  watches: 'Every string goes straight from saddle to pin hole.',
  judge: (judged) => {
    const { breaks } = judged.report;
    const over = stringsWhere(judged, (i) => breaks[i]?.over?.straight !== true);
    if (over.length === 0) return undefined;
    const most = Math.max(...over.map((i) => breaks[i]?.over?.inTheWay ?? 0));
    return {
      severity: 'note',
      text: `Wood stands between saddle and hole in the way of ${nameStrings(judged, over)}: a channel, or pins further forward, lets a string go straight into its hole.`,
      found: `${mm(most)} of wood in the way`,
      limit: 'no wood in the way',
      source: PRACTICE,
      path: 'pins.channel',
      place: over.map((i) => alongString(judged, i)),
      mends: ['pins.channelLength', 'pins.channelDepth', 'pins.behindSlot', 'saddle.showing'],
    };
  },
});
