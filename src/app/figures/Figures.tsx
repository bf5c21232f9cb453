import { useMemo } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { surfaceFigures } from '../../../models/surface/figures.ts';
import { judge } from '../store/judge.ts';
import { shownPart } from '../store/shownPart.ts';
import { useApp } from '../store/useApp.ts';
import { FigureList } from './FigureList.tsx';
import { massFigures } from './massFigures.ts';
import { shapeFigures } from './shapeFigures.ts';
import { solidFigures } from './solidFigures.ts';
import { useSettled } from './useSettled.ts';

/** How long a design rests before its wood is added up, ms: that takes longer than a frame. */
const REST = 150;

/** What the design comes to: mass and shape at once, the exact solid's figures when it is there. */
export function Figures() {
  const accepted = useApp((state) => state.lastGood);
  const current = useApp((state) => judge(state.history.present).ok);
  const { solid } = useApp(useShallow(shownPart));
  const holes = useApp(({ session }) => session.holes);
  const settled = useSettled(accepted, REST);
  const mass = useMemo(
    () =>
      settled &&
      massFigures(
        settled.design,
        surfaceFigures(settled.curves, 'drilled'),
        surfaceFigures(settled.curves, 'reamed'),
      ),
    [settled],
  );
  const shape = useMemo(() => accepted && shapeFigures(accepted.design, accepted.curves), [accepted]);
  return (
    <section className="panel" aria-labelledby="figures-title">
      <h2 id="figures-title">Figures</h2>
      {!current && accepted && <p className="aside">Of the last good design, not of what is typed now.</p>}
      {mass && (
        <div className={settled === accepted ? undefined : 'settling'}>
          <FigureList figures={mass} />
        </div>
      )}
      {shape && (
        <>
          <h3>Shape</h3>
          <FigureList figures={shape} />
        </>
      )}
      <h3>Exact solid</h3>
      {solid && accepted ? (
        <FigureList figures={solidFigures(solid.figures, holes, accepted.design.guitar.hand)} />
      ) : (
        <p className="aside">{current ? 'Being made …' : 'Made when the design can be made.'}</p>
      )}
    </section>
  );
}
