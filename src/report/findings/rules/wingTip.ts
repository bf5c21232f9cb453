import { mm } from '../../said.ts';
import { outside } from '../outside.ts';
import { tipLines } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';

export const wingTip = rule({
  id: 'wing-tip',
  about: 'wood',
  watches: 'How thick the wings are at their tips.',
  judge: ({ accepted: { design, curves } }) => {
    const { tip } = design.top;
    const out = outside(design, [tip], { least: 'tipLeast', most: 'tipMost', unit: 'mm' });
    if (!out) return undefined;
    return {
      severity: 'warning',
      text: `The wings end ${mm(tip)} thick: ${out.lowest ? 'a tip so thin curls off the soundboard and breaks when the clamps press on it' : 'a tip so thick stiffens the soundboard beyond the bridge’s ends, and looks heavy'}.`,
      ...out.held,
      source: PRACTICE,
      path: 'top.tip',
      place: tipLines(curves),
      mends: ['top.tip', 'aim.tip', 'aim.mass'],
    };
  },
});
