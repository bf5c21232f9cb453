import { useDeferredValue, useMemo } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { surfaceFigures } from '../../../models/surface/figures.ts';
import { judge } from '../store/judge.ts';
import { shownPart } from '../store/shownPart.ts';
import { useApp } from '../store/useApp.ts';
import { FigureList } from './FigureList.tsx';
import { massFigures } from './massFigures.ts';
import { shapeFigures } from './shapeFigures.ts';
import { solidFigures } from './solidFigures.ts';

/** What the design comes to: mass and shape at once, the exact solid's figures when it is there. */
export function Figures() {
  const accepted = useApp((state) => state.lastGood);
  const current = useApp((state) => judge(state.history.present).ok);
  const { solid } = useApp(useShallow(shownPart));
  // adding up the wood takes longer than a frame: typing and dragging go first
  const settled = useDeferredValue(accepted);
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
  const shape = useMemo(() => settled && shapeFigures(settled.design, settled.curves), [settled]);
  return (
    <section className="panel" aria-labelledby="figures-title">
      <h2 id="figures-title">Figures</h2>
      {!current && accepted && <p className="aside">Of the last good design, not of what is typed now.</p>}
      {mass && <FigureList figures={mass} />}
      {shape && (
        <>
          <h3>Shape</h3>
          <FigureList figures={shape} />
        </>
      )}
      <h3>Exact solid</h3>
      {solid ? (
        <FigureList figures={solidFigures(solid.figures)} />
      ) : (
        <p className="aside">{current ? 'Being made …' : 'Made when the design can be made.'}</p>
      )}
    </section>
  );
}
