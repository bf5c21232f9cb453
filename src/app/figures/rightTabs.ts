import type { RightTab } from '../store/state.ts';

/** What the right column's tabs say. */
export const RIGHT_TABS: Readonly<Record<RightTab, string>> = {
  fit: 'Fit',
  findings: 'Findings',
  figures: 'Figures',
  compare: 'Compare',
};
