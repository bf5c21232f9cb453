import { Guard } from '../Guard.tsx';
import { useApp } from '../store/useApp.ts';
import { Care } from './Care.tsx';
import { Figures } from './Figures.tsx';
import './figures.css';
import { ProblemList } from './ProblemList.tsx';

/** The right column: what is to be mended, what the design comes to, and what to take care of. */
export function RightColumn() {
  const document = useApp(({ history }) => history.present);
  return (
    <div className="right-column">
      <ProblemList />
      <Guard what="The figures" again={document}>
        <Figures />
      </Guard>
      <Care />
    </div>
  );
}
