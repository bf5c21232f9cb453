import { findingsOf } from '../store/findingsOf.ts';
import { judge } from '../store/judge.ts';
import { useApp } from '../store/useApp.ts';
import { FindingCard } from './FindingCard.tsx';
import './findings.css';
import { sayCounts } from '../../report/findings/severityWords.ts';
import { Watched } from './Watched.tsx';

/** Everything the trade's rules say of the design. One that is chosen shows its place on the part. */
export function Findings() {
  const accepted = useApp((state) => state.lastGood);
  const current = useApp((state) => judge(state.history.present).ok);
  const chosen = useApp(({ session }) => session.finding);
  const found = accepted ? findingsOf(accepted) : [];
  return (
    <section className="panel" aria-labelledby="findings-title">
      <h2 id="findings-title">Findings</h2>
      {!accepted && <p className="aside">The rules are asked as soon as the dimensions fit together.</p>}
      {accepted && !current && <p className="aside">Of the last good design, not of what is typed now.</p>}
      {accepted && (
        <p className={found.length === 0 ? 'well' : 'aside'} data-findings={found.length}>
          {found.length === 0
            ? 'No rule has anything to say against this design.'
            : `${sayCounts(found)}. Press one to see where it is.`}
        </p>
      )}
      <ul className="findings">
        {accepted &&
          found.map((finding) => (
            <li key={finding.id}>
              <FindingCard accepted={accepted} finding={finding} open={finding.id === chosen} />
            </li>
          ))}
      </ul>
      <Watched />
    </section>
  );
}
