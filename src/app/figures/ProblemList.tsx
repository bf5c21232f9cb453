import { GROUP_NAMES } from '../form/groupNames.ts';
import { placeOf } from '../store/fieldAt.ts';
import { judge } from '../store/judge.ts';
import { mend } from '../store/mend.ts';
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
        {problems.map((problem) => {
          const place = placeOf(problem.path);
          return (
            <li key={`${problem.code} ${problem.path} ${problem.allowed}`}>
              <button type="button" onClick={() => store.callTo(problem.path)}>
                <strong>
                  {place ? `${GROUP_NAMES[place.group]}, ${place.field.label.toLowerCase()}` : 'Design'}:{' '}
                  <span className="given">{problem.value}</span>
                </strong>
                <span>{mend(problem)}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
