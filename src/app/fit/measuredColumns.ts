import type { Design } from '../../design/design.ts';
import { fixed, signed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import { outerActions } from '../../trade/fit/measuredAgain.ts';
import type { Column } from './column.ts';
import { sourced } from './sourced.ts';

/** What the finished guitar's own measures turn into; no column for what was not measured. */
export function measuredColumns(
  { action, saddle: { tilt } }: Design,
  { crowns, measured }: FitReport,
): readonly Column[] {
  const { setbacks, misread, saddles } = measured;
  const columns: Column[] = [];
  if (setbacks.some((setback, i) => setback !== undefined || misread[i]))
    columns.push({
      key: 'corrected',
      head: 'set-back',
      unit: 'mm',
      name: 'Set-back that brings the 12th fret in tune, from your cents',
      values: setbacks.map((setback, i) =>
        setback === undefined ? (misread[i] ? 'misread' : '–') : fixed(setback, 2),
      ),
      amiss: misread,
      sourced: (i) =>
        sourced(
          ['measured-setback'],
          action.cents[i] === undefined
            ? 'no cents were measured'
            : `${signed(action.cents[i] as number, 1)} cents with a set-back of ${fixed(crowns[i]?.setback ?? 0, 2)} mm${misread[i] ? ': no saddle can be set back that far, so something was misread' : ''}`,
        ),
      path: 'action.cents',
    });
  const outer = outerActions(action.measured);
  if (outer) {
    const saddle = (head: string, name: string, values: readonly string[]): Column => ({
      key: head,
      head,
      unit: 'mm',
      name,
      values,
      sourced: () =>
        sourced(
          ['measured-saddle'],
          `measured ${outer.treble} and ${outer.bass}, wanted ${action.treble} and ${action.bass} mm at the outer strings; τ ${fixed(tilt, 1)}°`,
        ),
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
