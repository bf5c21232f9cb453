import { fixed } from '../../report/said.ts';
import type { Figure } from './figure.ts';
import type { Weighed } from './figuresOf.ts';
import { type Pairs, pairFigure } from './pairs.ts';

/** What all strings together do to the bridge, and the most that one of them does. */
export function loadFigures({ accepted: { fit } }: Weighed, pairs: Pairs): readonly Figure[] {
  const { strings, height } = fit;
  const pulls = strings.map(({ tensionN }) => fixed(tensionN, 1)).join(' + ');
  const lifts = strings
    .map(({ tensionN }, i) => `${fixed(tensionN, 1)}·${fixed(height.undersides[i] ?? 0, 2)}`)
    .join(' + ');
  const each = 'the greatest of the table below, string by string';
  return [
    ...pairFigure(pairs, 'pull', pulls, { path: 'strings.set' }),
    ...pairFigure(pairs, 'couple', `${lifts} N·mm`, { path: 'action.treble' }),
    ...pairFigure(pairs, 'saddle-load', each, { path: 'pins.behindSlot' }),
    ...pairFigure(pairs, 'front-wall', each, { path: 'saddle.depth' }),
    ...pairFigure(pairs, 'wall-stress', each, { path: 'footprint.slotBehindFront' }),
    ...pairFigure(pairs, 'pin-bearing', each, { path: 'pins.mouth' }),
  ];
}
