import { fixed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import { FigureList } from '../figures/FigureList.tsx';
import type { Accepted } from '../store/judge.ts';
import { StringCare } from './StringCare.tsx';
import { StringTable } from './StringTable.tsx';
import { sourced } from './sourced.ts';
import { tensionColumns } from './tensionColumns.ts';
import { useShown } from './useShown.ts';

interface PartProps {
  readonly accepted: Accepted;
  readonly report: FitReport;
}

/** What the strings pull, alone and together. */
export function Pull({ accepted: { design, fit }, report }: PartProps) {
  const [shown, show] = useShown(fit.strings.length);
  const sum = fit.strings.reduce((all, { tensionN }) => all + tensionN, 0);
  return (
    <>
      <h3>What the strings pull</h3>
      <FigureList
        figures={[
          {
            label: 'All strings together',
            value: fixed(sum, 1),
            unit: 'N',
            ...sourced(['S2'], fit.strings.map(({ tensionN }) => fixed(tensionN, 1)).join(' + ')),
            path: 'strings.set',
          },
        ]}
      />
      <StringTable
        name="Tension by string"
        columns={tensionColumns(design, fit, report)}
        strings={fit.strings}
        shown={shown}
        onShow={show}
      />
      <StringCare strings={fit.strings} />
    </>
  );
}
