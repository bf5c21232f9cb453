import { useApp, useAppStore } from '../store/useApp.ts';
import { Tabs } from '../Tabs.tsx';
import { RightColumn } from './RightColumn.tsx';
import { useRightTabs } from './useRightTabs.ts';

/** The right column of a wide window, with its tabs over it. */
export function RightTabs() {
  const store = useAppStore();
  const tabs = useRightTabs();
  const tab = useApp(({ session }) => session.rightTab);
  return (
    <>
      <Tabs
        label="Right column"
        panel="right-panel"
        front={tab}
        tabs={tabs}
        onTurn={(rightTab) => store.setSession({ rightTab })}
      />
      <div id="right-panel" role="tabpanel" aria-labelledby={`tab-${tab}`}>
        <RightColumn />
      </div>
    </>
  );
}
