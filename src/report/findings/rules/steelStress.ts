import { OWN_LEVEL } from '../../../trade/ownLevel.ts';
import { above, plain, said } from '../../said.ts';
import { nameStrings, stringsWhere } from '../ofStrings.ts';
import { alongString } from '../places.ts';
import { rule } from '../rule.ts';

export const steelStress = rule({
  id: 'steel-stress',
  about: 'fit',
  watches: 'What the strings’ steel cores bear at pitch.',
  judge: (judged) => {
    const { steel } = judged.accepted.design.limits;
    const stress = (i: number) => (judged.accepted.fit.strings[i]?.stressPa ?? 0) / 1e9;
    const stressed = stringsWhere(judged, (i) => above(stress(i), steel));
    if (stressed.length === 0) return undefined;
    const most = Math.max(...stressed.map(stress));
    return {
      severity: 'warning',
      text: `The core of ${nameStrings(judged, stressed)} bears ${said(most, 'GPa')} at most, if the core is as thick as typed; string steel is stressed up to about 2 GPa, and this is said beyond ${plain(steel)}. Measure the core; look at gauge and note.`,
      found: said(most, 'GPa'),
      limit: `at most ${said(steel, 'GPa')}`,
      source: `String steel is stressed up to about 2 GPa: Zollner, Physics of the Electric Guitar §1.2. The limit beyond it: ${OWN_LEVEL}`,
      path: 'strings.cores',
      limitPath: 'limits.steel',
      place: stressed.map((i) => alongString(judged, i)),
      mends: [],
    };
  },
});
