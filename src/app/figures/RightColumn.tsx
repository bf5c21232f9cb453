import type { ReactNode } from 'react';
import { Compare } from '../compare/Compare.tsx';
import { Findings } from '../findings/Findings.tsx';
import { Fit } from '../fit/Fit.tsx';
import { Guard } from '../Guard.tsx';
import type { RightTab } from '../store/state.ts';
import { useApp } from '../store/useApp.ts';
import { Care } from './Care.tsx';
import { Figures } from './Figures.tsx';
import './figures.css';
import { ProblemList } from './ProblemList.tsx';

const PANELS: Readonly<Record<RightTab, { readonly what: string; readonly panel: () => ReactNode }>> = {
  fit: { what: 'The fit', panel: Fit },
  findings: { what: 'The findings', panel: Findings },
  figures: { what: 'The figures', panel: Figures },
  compare: { what: 'The comparison', panel: Compare },
};

/** The right column: what is to be mended, one panel of what the design comes to, and what to take care of. */
export function RightColumn() {
  const document = useApp(({ history }) => history.present);
  const { what, panel: Panel } = PANELS[useApp(({ session }) => session.rightTab)];
  return (
    <div className="right-column">
      <ProblemList />
      <Guard key={what} what={what} again={document}>
        <Panel />
      </Guard>
      <Care />
    </div>
  );
}
