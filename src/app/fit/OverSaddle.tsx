import { fixed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import { FigureList } from '../figures/FigureList.tsx';
import { Picture } from '../picture/Picture.tsx';
import type { Accepted } from '../store/judge.ts';
import { elevationPicture } from './elevationPicture.ts';
import { heightFigures } from './heightFigures.ts';
import { StringTable } from './StringTable.tsx';
import { saddleColumns } from './saddleColumns.ts';
import { useShown } from './useShown.ts';

interface PartProps {
  readonly accepted: Accepted;
  readonly report: FitReport;
}

/** The shown string over its saddle to its pin, and all heights. */
export function OverSaddle({ accepted: { design, curves, fit }, report }: PartProps) {
  const [shown, show] = useShown(fit.strings.length);
  const note = fit.strings[shown]?.note;
  const over = report.breaks[shown]?.over;
  const said = over
    ? `breaks by ${fixed(over.angle, 1)}° over its saddle, falling ${fixed(over.rise, 2)} mm over ${fixed(over.run, 2)}`
    : 'has no pin behind the slot';
  return (
    <>
      <h3>
        String {shown + 1} ({note}) over the saddle, to scale
      </h3>
      <Picture
        name="elevation"
        drawn={elevationPicture(curves, fit, report, shown)}
        label={`Side elevation, nut to the right: string ${shown + 1}, ${note}, ${said}`}
      />
      <p className="aside">Nut to the right. It {said}.</p>
      <StringTable
        name="Heights and break by string"
        columns={saddleColumns(design, fit, report)}
        strings={fit.strings}
        shown={shown}
        onShow={show}
      />
      <FigureList figures={heightFigures(design, fit, report)} />
    </>
  );
}
