import { Care } from './Care.tsx';
import { Figures } from './Figures.tsx';
import './figures.css';
import { ProblemList } from './ProblemList.tsx';

/** The right column: what is to be mended, what the design comes to, and what to take care of. */
export function RightColumn() {
  return (
    <div className="right-column">
      <ProblemList />
      <Figures />
      <Care />
    </div>
  );
}
