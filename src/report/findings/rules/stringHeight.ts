import { nameStrings } from '../ofStrings.ts';
import { outside } from '../outside.ts';
import { alongString } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';

export const stringHeight = rule({
  id: 'string-height',
  about: 'fit',
  watches: 'How high the strings pass over the soundboard at the saddle.',
  judge: (judged) => {
    const { design } = judged.accepted;
    const heights = judged.report.crowns.map(({ height }) => height);
    const out = outside(design, heights, { least: 'stringLeast', most: 'stringMost', unit: 'mm' });
    if (!out) return undefined;
    const lines = [
      out.lowest &&
        `From the soundboard it is as little as ${out.lowest} to ${nameStrings(judged, out.low)}: little room for a picking hand, and little leverage to drive the top.`,
      out.highest &&
        `From the soundboard it is as much as ${out.highest} to ${nameStrings(judged, out.high)}: the higher, the more the strings twist the bridge forward and belly the top.`,
    ].filter((one) => one !== '');
    return {
      severity: 'warning',
      text: `${lines.join(' ')} That follows from how the neck is set, not from the bridge.`,
      ...out.held,
      source: PRACTICE,
      path: design.action.planeBy === 'neck' ? 'action.neckAngle' : 'action.planeHeight',
      place: [...out.low, ...out.high].map((i) => alongString(judged, i)),
      // what was measured of a guitar is no knob: nothing of the bridge moves its strings
      mends: [],
    };
  },
});
