import { Compare } from '../compare/Compare.tsx';
import { Fit } from '../fit/Fit.tsx';
import { Guard } from '../Guard.tsx';
import { useApp } from '../store/useApp.ts';
import { Care } from './Care.tsx';
import { Figures } from './Figures.tsx';
import './figures.css';
import { ProblemList } from './ProblemList.tsx';

/**
 * The right column: what is to be mended, how the bridge fits, what it comes to or how it compares, and what to take
 * care of. Only what is in front is worked out.
 */
export function RightColumn() {
  const document = useApp(({ history }) => history.present);
  const tab = useApp(({ session }) => session.rightTab);
  return (
    <div className="right-column">
      <ProblemList />
      {tab === 'fit' && (
        <Guard what="The fit" again={document}>
          <Fit />
        </Guard>
      )}
      {tab === 'figures' && (
        <Guard what="The figures" again={document}>
          <Figures />
        </Guard>
      )}
      {tab === 'compare' && (
        <Guard what="The comparison" again={document}>
          <Compare />
        </Guard>
      )}
      <Care />
    </div>
  );
}
