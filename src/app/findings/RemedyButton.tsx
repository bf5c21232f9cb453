import type { Finding } from '../../report/findings/finding.ts';
import { withChanges } from '../../report/findings/withChanges.ts';
import { type Accepted, judge } from '../store/judge.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { useRemedy } from './useRemedy.ts';

/** The one press that mends a finding and what it costs, or that no single number does. */
export function RemedyButton({ accepted, finding }: { accepted: Accepted; finding: Finding }) {
  const store = useAppStore();
  const current = useApp(({ history }) => judge(history.present).ok);
  const looked = useRemedy(accepted, finding);
  if (looked === 'looking') return <p className="aside">Looking for a remedy …</p>;
  const { remedy } = looked;
  if (!remedy) return <p className="aside">No single number mends it.</p>;
  const { text, path, changes, price } = remedy;
  return (
    <>
      <button
        type="button"
        className={price.length === 0 ? 'main' : undefined}
        disabled={!current}
        onClick={() => {
          store.replaceDesign(withChanges(store.getState().history.present, changes));
          store.select(path);
        }}
      >
        {text}
      </button>
      {price.map((one) => (
        <p key={one.id} className="finding-price">
          Then: {one.text}
        </p>
      ))}
    </>
  );
}
