import { findingsOf } from '../store/findingsOf.ts';
import type { RightTab } from '../store/state.ts';
import { useApp } from '../store/useApp.ts';

/** What the right column's tabs say: that of the findings how many there are, notes apart. Faults stand over every tab. */
export function useRightTabs(): Readonly<Record<RightTab, string>> {
  const grave = useApp(({ lastGood }) =>
    lastGood ? findingsOf(lastGood).filter(({ severity }) => severity !== 'note').length : 0,
  );
  return {
    fit: 'Fit',
    findings: grave > 0 ? `Findings · ${grave}` : 'Findings',
    figures: 'Figures',
    compare: 'Compare',
  };
}
