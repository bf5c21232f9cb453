import { Fit } from '../fit/Fit.tsx';
import { Guard } from '../Guard.tsx';
import { useApp } from '../store/useApp.ts';
import { Care } from './Care.tsx';
import { Figures } from './Figures.tsx';
import './figures.css';
import { ProblemList } from './ProblemList.tsx';

/** The right column: what is to be mended, how the bridge fits or what it comes to, and what to take care of. */
export function RightColumn() {
  const document = useApp(({ history }) => history.present);
  const fit = useApp(({ session }) => session.rightTab === 'fit');
  return (
    <div className="right-column">
      <ProblemList />
      <div hidden={!fit}>
        <Guard what="The fit" again={document}>
          <Fit />
        </Guard>
      </div>
      <div hidden={fit}>
        <Guard what="The figures" again={document}>
          <Figures />
        </Guard>
      </div>
      <Care />
    </div>
  );
}
