import type { RightTab } from '../store/state.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { Tabs } from '../Tabs.tsx';
import { RightColumn } from './RightColumn.tsx';

/** The right column of a wide window, with its tabs over it. */
export function RightTabs() {
  const store = useAppStore();
  const tab = useApp(({ session }) => session.rightTab);
  return (
    <>
      <Tabs
        label="Right column"
        panel="right-panel"
        front={tab}
        tabs={{ fit: 'Fit', figures: 'Figures' } satisfies Record<RightTab, string>}
        onTurn={(rightTab) => store.setSession({ rightTab })}
      />
      <div id="right-panel" role="tabpanel" aria-labelledby={`tab-${tab}`}>
        <RightColumn />
      </div>
    </>
  );
}
