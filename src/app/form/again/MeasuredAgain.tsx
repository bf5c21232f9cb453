import { useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { FIELDS } from '../../../design/fields.ts';
import { given, mend } from '../../../design/problem.ts';
import { problemsAt } from '../../store/judge.ts';
import { useApp } from '../../store/useApp.ts';
import { entryAt } from '../strings/stringLists.ts';
import { useCall } from '../useCall.ts';
import './again.css';
import { ActionAgain } from './ActionAgain.tsx';
import { CentsAgain } from './CentsAgain.tsx';

const PATHS = ['action.cents', 'action.measured'];
const FAULTS = 'again-faults';

/** What the finished guitar shows, and what the fit makes of it: corrected set-backs, and a higher or lower saddle. */
export function MeasuredAgain() {
  const { cents, measured } = useApp(({ history }) => history.present.action);
  const faults = useApp(
    useShallow(({ history }) => PATHS.flatMap((path) => problemsAt(history.present, path))),
  );
  const selected = useApp(({ session }) => PATHS.includes(session.selected ?? ''));
  const called = useApp(({ session }) => PATHS.includes(session.call.path));
  const typed = [cents, measured].some(
    (list) => Array.isArray(list) && list.some((_, i) => entryAt(list, i) !== ''),
  );
  const [opened, setOpened] = useState(false);
  const table = useCall(...PATHS);
  const isFaulty = (path: string) => faults.some((problem) => problem.path === path);
  return (
    <div className="entries again" ref={table}>
      <details
        open={opened || selected || called || faults.length > 0}
        onToggle={(event) => setOpened(event.currentTarget.open)}
      >
        <summary>
          <span>Measured again</span>
          <span className="essence">{typed ? 'as the guitar shows' : 'when it is strung'}</span>
        </summary>
        <CentsAgain field={FIELDS.action.cents} isFaulty={isFaulty} faults={FAULTS} />
        <ActionAgain field={FIELDS.action.measured} isFaulty={isFaulty} faults={FAULTS} />
        <div id={FAULTS} className="problems" aria-live="polite">
          {faults.map((problem) => (
            <p key={`${problem.code} ${problem.path} ${problem.allowed}`}>
              {problem.path.startsWith('action.cents') ? 'Cents' : 'Action'} {given(problem)}: {mend(problem)}
            </p>
          ))}
        </div>
      </details>
    </div>
  );
}
