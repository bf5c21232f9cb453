import { findingsOf } from '../store/findingsOf.ts';
import { judge } from '../store/judge.ts';
import type { RightTab } from '../store/state.ts';
import { useApp } from '../store/useApp.ts';

/** What the right column's tabs say: that of the findings how many there are, notes apart. */
export function useRightTabs(): Readonly<Record<RightTab, string>> {
  const faults = useApp((state) => judge(state.history.present).problems.length);
  const grave = useApp(({ lastGood }) =>
    lastGood ? findingsOf(lastGood).filter(({ severity }) => severity !== 'note').length : 0,
  );
  return {
    fit: 'Fit',
    findings: faults > 0 ? `Findings · ${faults} to mend` : grave > 0 ? `Findings · ${grave}` : 'Findings',
    figures: 'Figures',
    compare: 'Compare',
  };
}
