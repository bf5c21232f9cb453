import { useMemo } from 'react';
import type { Finding } from '../../report/findings/finding.ts';
import { remedyOf } from '../../report/findings/remedyOf.ts';
import { withChanges } from '../../report/findings/withChanges.ts';
import { useSettled } from '../figures/useSettled.ts';
import { type Accepted, judge } from '../store/judge.ts';
import { useApp, useAppStore } from '../store/useApp.ts';

/** How long a design rests before a remedy is looked for, ms: that takes many trials. */
const REST = 200;

/** The one press that mends a finding, or that no single number does. */
export function RemedyButton({ accepted, finding }: { accepted: Accepted; finding: Finding }) {
  const store = useAppStore();
  const current = useApp(({ history }) => judge(history.present).ok);
  const asked = useMemo(() => ({ accepted, finding }), [accepted, finding]);
  const settled = useSettled(asked, REST);
  const remedy = useMemo(() => settled && remedyOf(settled.accepted, settled.finding), [settled]);
  if (settled !== asked) return <p className="aside">Looking for a remedy …</p>;
  if (!remedy) return <p className="aside">No single number mends it.</p>;
  return (
    <button
      type="button"
      className="main"
      disabled={!current}
      onClick={() => {
        store.replaceDesign(withChanges(store.getState().history.present, remedy.changes));
        store.select(remedy.path);
      }}
    >
      {remedy.text}
    </button>
  );
}
