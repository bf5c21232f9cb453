import { findings } from '../../report/findings/findings.ts';
import { judgedOf } from '../../report/findings/judgedOf.ts';
import { FigureList } from '../figures/FigureList.tsx';
import { judge } from '../store/judge.ts';
import { reportOf } from '../store/reportOf.ts';
import { useApp } from '../store/useApp.ts';
import './fit.css';
import { Intonation } from './Intonation.tsx';
import { MeasuredAgain } from './MeasuredAgain.tsx';
import { OverSaddle } from './OverSaddle.tsx';
import { Pull } from './Pull.tsx';
import { RemarkList } from './RemarkList.tsx';
import { SlotPlan } from './SlotPlan.tsx';
import { slotFigures } from './slotFigures.ts';

/** How the bridge fits its guitar: slot, intonation, heights and strings, a picture beside each. */
export function Fit() {
  const accepted = useApp((state) => state.lastGood);
  const current = useApp((state) => judge(state.history.present).ok);
  const report = accepted && reportOf(accepted);
  if (!accepted || !report) {
    return (
      <section className="panel fit">
        <p className="aside">The fit is worked out as soon as the dimensions fit together.</p>
      </section>
    );
  }
  const { design, fit } = accepted;
  return (
    <section className="panel fit" aria-labelledby="fit-title">
      <h2 id="fit-title">Fit to this guitar</h2>
      {!current && <p className="aside">Of the last good design, not of what is typed now.</p>}
      <FigureList figures={slotFigures(design, fit)} />
      <SlotPlan accepted={accepted} report={report} />
      <RemarkList found={findings(judgedOf(accepted, report), 'fit')} />
      <Intonation accepted={accepted} report={report} />
      <OverSaddle accepted={accepted} report={report} />
      <MeasuredAgain accepted={accepted} report={report} />
      <Pull accepted={accepted} report={report} />
    </section>
  );
}
