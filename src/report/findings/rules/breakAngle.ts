import { below, said } from '../../said.ts';
import { isUnder, nameStrings, stringsWhere } from '../ofStrings.ts';
import { alongString } from '../places.ts';
import { rule } from '../rule.ts';

export const breakAngle = rule({
  id: 'break-angle',
  about: 'fit',
  watches: 'Every string turns down far enough over the saddle.',
  judge: (judged) => {
    const { breakAngle: limit } = judged.accepted.design.limits;
    const angle = (i: number) => judged.report.breaks[i]?.over?.angle;
    const flat = stringsWhere(judged, (i) => {
      const turn = angle(i);
      return turn !== undefined && turn > 0 && below(turn, limit, 1) && !isUnder(judged, i);
    });
    if (flat.length === 0) return undefined;
    const least = Math.min(...flat.map((i) => angle(i) ?? 0));
    return {
      severity: 'warning',
      text: `The break angle of ${nameStrings(judged, flat)} is as little as ${said(least, '°', 1)}: a string so flat bears but lightly on its crown, and may buzz or slip there.`,
      found: said(least, '°', 1),
      limit: `at least ${said(limit, '°', 1)}`,
      source: 'Common practice (15 to 20°), no source.',
      path: 'pins.behindSlot',
      limitPath: 'limits.breakAngle',
      place: flat.map((i) => alongString(judged, i)),
      mends: [
        'pins.behindSlot',
        'saddle.showing',
        'pins.channelDepth',
        'pins.channelLength',
        'top.thickness',
      ],
    };
  },
});
