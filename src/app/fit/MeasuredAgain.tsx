import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Accepted } from '../store/judge.ts';
import { measuredColumns } from './measuredColumns.ts';
import { StringTable } from './StringTable.tsx';
import { useShown } from './useShown.ts';

interface PartProps {
  readonly accepted: Accepted;
  readonly report: FitReport;
}

/** What the finished guitar's own measures turn into: there once something was measured. */
export function MeasuredAgain({ accepted: { design, fit }, report }: PartProps) {
  const [shown, show] = useShown(fit.strings.length);
  const columns = measuredColumns(design, report);
  if (columns.length === 0) return null;
  return (
    <>
      <h3>From what the finished guitar shows</h3>
      <StringTable
        name="Corrections by string"
        columns={columns}
        strings={fit.strings}
        shown={shown}
        onShow={show}
      />
    </>
  );
}
