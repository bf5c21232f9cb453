import { RightColumn } from './figures/RightColumn.tsx';
import { useRightTabs } from './figures/useRightTabs.ts';
import { Form } from './form/Form.tsx';
import { useApp, useAppStore } from './store/useApp.ts';
import { Tabs } from './Tabs.tsx';

/** In a narrow window the right column lies behind the form, each part of it under a tab. */
export function Side() {
  const store = useAppStore();
  const figures = useApp(({ session }) => session.figuresInFront);
  const rightTab = useApp(({ session }) => session.rightTab);
  const rightTabs = useRightTabs();
  const front = figures ? rightTab : 'bench';
  return (
    <section className="side left" aria-label="Bench, and what it comes to">
      <Tabs
        label="Left column"
        panel="side-panel"
        front={front}
        tabs={{
          bench: 'Bench',
          ...rightTabs,
        }}
        onTurn={(tab) =>
          store.setSession(
            tab === 'bench' ? { figuresInFront: false } : { figuresInFront: true, rightTab: tab },
          )
        }
      />
      <div id="side-panel" role="tabpanel" aria-labelledby={`tab-${front}`}>
        {figures ? <RightColumn /> : <Form />}
      </div>
    </section>
  );
}
