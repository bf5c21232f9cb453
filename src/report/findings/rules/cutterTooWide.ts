import { above, said } from '../../said.ts';
import { slotRim } from '../places.ts';
import { rule } from '../rule.ts';

export const cutterTooWide = rule({
  id: 'cutter-too-wide',
  about: 'making',
  watches: 'The slot’s cutter is no wider than the slot.',
  judge: ({ accepted: { design, curves } }) => {
    const { cutter, slotWidth } = design.saddle;
    if (!above(cutter, slotWidth, 3)) return undefined;
    return {
      severity: 'error',
      text: `A cutter of ${said(cutter, 'mm', 3)} can’t make a slot of ${said(slotWidth, 'mm', 3)}: the saddle would stand loose in what it cuts. Take a smaller cutter, or a wider slot and saddle.`,
      found: said(cutter, 'mm', 3),
      limit: `at most the slot’s ${said(slotWidth, 'mm', 3)}`,
      source: 'No cutter makes a groove narrower than itself.',
      path: 'saddle.cutter',
      place: slotRim(curves),
      mends: ['saddle.cutter', 'saddle.slotWidth'],
    };
  },
});
