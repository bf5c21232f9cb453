import { FIELDS } from '../../../design/fields.ts';
import { fromTo, said } from '../../said.ts';
import { nameStrings, stringsWhere } from '../ofStrings.ts';
import { alongString } from '../places.ts';
import { rule } from '../rule.ts';

export const centsMisread = rule({
  id: 'cents-misread',
  about: 'fit',
  watches: 'The cents measured on the finished guitar are such as a saddle can cure.',
  judge: (judged) => {
    const { misread } = judged.report.measured;
    const mistaken = stringsWhere(judged, (i) => misread[i] === true);
    if (mistaken.length === 0) return undefined;
    const { min, max } = FIELDS.strings.setbacks;
    const { cents } = judged.accepted.design.action;
    return {
      severity: 'warning',
      text: `No set-back from ${fromTo(min, max, 'mm')} brings the measured cents of ${nameStrings(judged, mistaken)} to 0: something was misread. Tune the open string and measure the 12th fret again.`,
      found: mistaken.map((i) => said(cents[i] ?? 0, 'cents')).join(', '),
      limit: `cured by a set-back of ${fromTo(min, max, 'mm')}`,
      source: 'Follows from the tuning of stiff strings.',
      path: 'action.cents',
      place: mistaken.map((i) => alongString(judged, i)),
      mends: [],
    };
  },
});
