import { given, mend } from '../../design/problem.ts';
import { placeName } from '../form/placeName.ts';
import { judge } from '../store/judge.ts';
import { useApp, useAppStore } from '../store/useApp.ts';

/** Why the design can't be made as typed. Each line leads to its field. */
export function ProblemList() {
  const store = useAppStore();
  const problems = useApp((state) => judge(state.history.present).problems);
  if (problems.length === 0) return null;
  return (
    <section className="panel problem-list" aria-labelledby="problems-title">
      <h2 id="problems-title">To mend</h2>
      <p className="aside">The design can’t be made as typed. The part shown is the last good design.</p>
      <ul>
        {problems.map((problem) => (
          <li key={`${problem.code} ${problem.path} ${problem.allowed}`}>
            <button type="button" onClick={() => store.callTo(problem.path)}>
              <strong>
                {placeName(problem.path)}: <span className="given">{given(problem)}</span>
              </strong>
              <span>{mend(problem)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
