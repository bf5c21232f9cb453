import { above, below, fromTo, mm } from '../../said.ts';
import { tipLines } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';

export const wingTip = rule({
  id: 'wing-tip',
  about: 'wood',
  watches: 'How thick the wings are at their tips.',
  judge: ({ accepted: { design, curves } }) => {
    const { tipLeast: least, tipMost: most } = design.limits;
    const { tip } = design.top;
    const thin = below(tip, least);
    if (!thin && !above(tip, most)) return undefined;
    return {
      severity: 'warning',
      text: `The wings end ${mm(tip)} thick: ${thin ? 'a tip so thin curls off the soundboard and breaks when the clamps press on it' : 'a tip so thick stiffens the soundboard beyond the bridge’s ends, and looks heavy'}.`,
      found: mm(tip),
      limit: fromTo(least, most, 'mm'),
      source: PRACTICE,
      path: 'top.tip',
      limitPath: thin ? 'limits.tipLeast' : 'limits.tipMost',
      place: tipLines(curves),
      mends: ['top.tip', 'aim.tip', 'aim.mass'],
    };
  },
});
