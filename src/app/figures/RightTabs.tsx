import { useApp, useAppStore } from '../store/useApp.ts';
import { Tabs } from '../Tabs.tsx';
import { RightColumn } from './RightColumn.tsx';
import { RIGHT_TABS } from './rightTabs.ts';

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
        tabs={RIGHT_TABS}
        onTurn={(rightTab) => store.setSession({ rightTab })}
      />
      <div id="right-panel" role="tabpanel" aria-labelledby={`tab-${tab}`}>
        <RightColumn />
      </div>
    </>
  );
}
