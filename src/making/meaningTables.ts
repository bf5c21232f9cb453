import { fixed } from '../report/said.ts';
import type { MeaningFigures, MeaningTable } from './meaning.ts';
import { UNSEEN } from './unseen.ts';

/** Cents that no ear hears, and that rounding may show. */
const UNHEARD = 0.05;

/** The saddle that is wanted now, and what the 12th frets are off by; each only where it isn't as designed. */
export function meaningTables({ strings, made, slot }: MeaningFigures): readonly MeaningTable[] {
  const heights = Math.abs(made.thicker) >= UNSEEN || Math.abs(made.deeper) >= UNSEEN;
  const lies = Math.abs(slot.back) >= UNSEEN || Math.abs(slot.turn) >= UNSEEN;
  const heard = strings.some(
    ({ cents: { designed, bySlot, byEdge } }) =>
      Math.abs(bySlot - designed) >= UNHEARD || Math.abs(byEdge - designed) >= UNHEARD,
  );
  return [
    ...(heights
      ? [
          {
            title: 'The saddle wanted now, mm along it',
            head: ['String', 'shows over the top', 'foot to crown'],
            rows: strings.map(({ note, saddle }) => [
              note,
              fixed(saddle.showing, 2),
              fixed(saddle.height, 2),
            ]),
          },
        ]
      : []),
    ...(lies || heard
      ? [
          {
            title: 'Cents off at the 12th fret',
            head: ['String', 'as designed', 'laid by the slot', 'laid by the back edge'],
            rows: strings.map(({ note, cents }) => [
              note,
              ...[cents.designed, cents.bySlot, cents.byEdge].map((one) => fixed(one, 1)),
            ]),
          },
        ]
      : []),
  ];
}
