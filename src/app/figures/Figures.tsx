import { useDeferredValue } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { LOAD_CAUTION } from '../../trade/loadCaution.ts';
import { Picture } from '../picture/Picture.tsx';
import { judge } from '../store/judge.ts';
import { shownPart } from '../store/shownPart.ts';
import { useApp } from '../store/useApp.ts';
import { Aimed } from './Aimed.tsx';
import { barPicture } from './barPicture.ts';
import { FigureList } from './FigureList.tsx';
import { figuresOf } from './figuresOf.ts';
import { glueFigures } from './glueFigures.ts';
import { LoadTables } from './LoadTables.tsx';
import { loadFigures } from './loadFigures.ts';
import { massByPart } from './massByPart.ts';
import { massFigures } from './massFigures.ts';
import { pairsOf } from './pairs.ts';
import { StiffnessPlot } from './StiffnessPlot.tsx';
import { shapeFigures } from './shapeFigures.ts';
import { solidFigures } from './solidFigures.ts';
import { spreadFigures } from './spreadFigures.ts';
import { stiffnessFigures } from './stiffnessFigures.ts';
import { TenthTable } from './TenthTable.tsx';
import { useReference } from './useReference.ts';

/** What the design comes to: all figures that follow from its curves at once, the exact solid's when it is there. */
export function Figures() {
  // a drag goes on while they are worked out
  const accepted = useDeferredValue(useApp((state) => state.lastGood));
  const current = useApp((state) => judge(state.history.present).ok);
  const { solid } = useApp(useShallow(shownPart));
  const holes = useApp(({ session }) => session.holes);
  const { name, reference } = useReference();
  if (!accepted) {
    return (
      <section className="panel">
        <p className="aside">Figures are worked out as soon as the dimensions fit together.</p>
      </section>
    );
  }
  const bench = figuresOf(accepted);
  const pairs = pairsOf(reference, bench);
  const parts = massByPart(bench);
  return (
    <section className="panel figures" aria-labelledby="figures-title">
      <h2 id="figures-title">Figures</h2>
      {!current && <p className="aside">Of the last good design, not of what is typed now.</p>}
      {accepted.aimed && <Aimed aimed={accepted.aimed} />}
      <h3>Mass</h3>
      <FigureList figures={massFigures(bench, pairs)} of={name} />
      <FigureList figures={spreadFigures(bench)} />
      <h3>Mass by part, the nut upward</h3>
      <Picture
        name="parts"
        drawn={barPicture(parts)}
        label={parts.map((part) => `${part.name} ${part.text}`).join(', ')}
      />
      <h3>Stiffness</h3>
      <FigureList figures={stiffnessFigures(bench, pairs)} of={name} />
      <StiffnessPlot bench={bench} reference={reference} name={name} />
      <TenthTable accepted={accepted} />
      <h3>Glue</h3>
      <FigureList figures={glueFigures(bench, pairs)} of={name} />
      <h3>Load</h3>
      <p className="caution">{LOAD_CAUTION}</p>
      <FigureList figures={loadFigures(bench, pairs)} of={name} />
      <LoadTables bench={bench} reference={reference} name={name} />
      <h3>Shape</h3>
      <FigureList figures={shapeFigures(accepted.design, accepted.curves)} />
      <h3>Exact solid</h3>
      {solid ? (
        <FigureList figures={solidFigures(solid.figures, holes, accepted.design.guitar.hand)} />
      ) : (
        <p className="aside">{current ? 'Being made …' : 'Made when the design can be made.'}</p>
      )}
    </section>
  );
}
