import { straightedgeGap as gapOver } from '../../../trade/straightedgeGap.ts';
import { above, below, fromTo, mm } from '../../said.ts';
import { between } from '../places.ts';
import { rule } from '../rule.ts';

export const straightedgeGap = rule({
  id: 'straightedge-gap',
  about: 'fit',
  watches: 'How a straightedge on the frets meets the bridge’s top.',
  judge: ({ accepted: { design, curves, fit } }) => {
    const { gapLeast: least, gapMost: most } = design.limits;
    const gap = gapOver(fit.height.fretPlane, 0, 0, curves.profile.thickness);
    const low = below(gap, least);
    if (!low && !above(gap, most)) return undefined;
    const meets =
      gap < 0 ? `meets the bridge ${mm(-gap)} below its top` : `passes ${mm(gap)} over the bridge’s top`;
    return {
      severity: 'warning',
      text: `A straightedge on the frets ${meets}: ${low ? 'the bridge stands high for this neck, and little saddle is left to bring the action down' : 'the bridge lies low for this neck, and takes a tall saddle'}.`,
      found: mm(gap),
      limit: fromTo(least, most, 'mm'),
      source:
        'Common practice is 0 to 1.5 mm, no source; that a top may stand 0.5 mm over it is our own level.',
      path: 'top.thickness',
      limitPath: low ? 'limits.gapLeast' : 'limits.gapMost',
      place: [between(curves, [0, 0], [0, design.footprint.slotBehindFront])],
      mends: ['saddle.showing', 'top.thickness'],
    };
  },
});
