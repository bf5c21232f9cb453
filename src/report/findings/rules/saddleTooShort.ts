import { mm, said } from '../../said.ts';
import { slotRim } from '../places.ts';
import { rule } from '../rule.ts';

export const saddleTooShort = rule({
  id: 'saddle-too-short',
  about: 'fit',
  watches: 'The saddle carries all strings on its length.',
  judge: ({ accepted, report }) => {
    const { top, length } = report.saddle;
    if (top) return undefined;
    const { slotLength } = accepted.design.saddle;
    const open = accepted.design.saddle.ends === 'open';
    return {
      severity: 'error',
      text: `A saddle of ${mm(length)} has no top that carries all strings: ${open ? 'lengthen the middle block' : 'lengthen the slot'} or narrow the spread.`,
      found: said(open ? length : slotLength, 'mm'),
      limit: `beyond the strings’ spread of ${mm(accepted.design.strings.spread)}`,
      source: 'Follows from where strings and saddle end.',
      path: open ? 'top.block' : 'saddle.slotLength',
      place: slotRim(accepted.curves),
      mends: ['saddle.slotLength', 'top.block', 'strings.spread'],
    };
  },
});
