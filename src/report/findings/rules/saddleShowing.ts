import { isUnder, nameStrings } from '../ofStrings.ts';
import { outside } from '../outside.ts';
import { saddleUnder } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';

export const saddleShowing = rule({
  id: 'saddle-showing',
  about: 'fit',
  watches: 'What shows of the saddle over the bridge’s top under every string.',
  judge: (judged) => {
    const { stands } = judged.report.saddle;
    const showing = stands.map((stand, i) => (isUnder(judged, i) ? undefined : stand.showing));
    const range = { least: 'showingLeast', most: 'showingMost', unit: 'mm' } as const;
    const out = outside(judged.accepted.design, showing, range);
    if (!out) return undefined;
    const lines = [
      out.lowest &&
        `The saddle shows as little as ${out.lowest} under ${nameStrings(judged, out.low)}: little is left to file when the action is lowered, and the strings turn down little behind it.`,
      out.highest &&
        `The saddle shows as much as ${out.highest} under ${nameStrings(judged, out.high)}: the higher it stands, the harder the strings lever it against the slot.`,
    ];
    return {
      severity: 'warning',
      text: lines.filter((one) => one !== '').join(' '),
      ...out.held,
      source: PRACTICE,
      path: 'saddle.showing',
      place: [...out.low, ...out.high].map((i) => saddleUnder(judged, i)),
      mends: ['saddle.showing', 'top.thickness'],
    };
  },
});
