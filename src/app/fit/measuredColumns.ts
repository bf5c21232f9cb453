import type { Design } from '../../design/design.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import { fixed } from '../figures/figure.ts';
import { type Column, signed } from './column.ts';
import { sourced } from './sourced.ts';

/** What the finished guitar's own measures turn into; no column for what was not measured. */
export function measuredColumns({ action }: Design, { crowns, measured }: FitReport): readonly Column[] {
  const { setbacks, saddles } = measured;
  const columns: Column[] = [];
  if (setbacks.some((setback) => setback !== undefined))
    columns.push({
      key: 'corrected',
      head: 'set-back',
      unit: 'mm',
      name: 'Set-back that brings the 12th fret in tune, from your cents',
      values: setbacks.map((setback) => (setback === undefined ? '–' : fixed(setback, 2))),
      sourced: (i) =>
        sourced(
          ['measured-setback'],
          action.cents[i] === undefined
            ? 'no cents were measured'
            : `${signed(action.cents[i] as number, 1)} cents with a set-back of ${fixed(crowns[i]?.setback ?? 0, 2)} mm`,
        ),
      path: 'action.cents',
    });
  if (saddles.length > 0) {
    const saddle = (head: string, name: string, values: readonly string[]): Column => ({
      key: head,
      head,
      unit: 'mm',
      name,
      values,
      sourced: () =>
        sourced(['measured-saddle'], `measured ${action.measured.join(' and ')} mm at the outer strings`),
      path: 'action.measured',
    });
    columns.push(
      saddle(
        'change',
        'What the saddle gains or loses',
        saddles.map(({ change }) => signed(change, 2)),
      ),
      saddle(
        'height',
        'Saddle’s height then',
        saddles.map(({ height }) => fixed(height, 2)),
      ),
      saddle(
        'shows',
        'Showing then',
        saddles.map(({ showing }) => fixed(showing, 2)),
      ),
    );
  }
  return columns;
}
