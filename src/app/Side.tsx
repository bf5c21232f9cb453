import { RightColumn } from './figures/RightColumn.tsx';
import { RIGHT_TABS } from './figures/rightTabs.ts';
import { Form } from './form/Form.tsx';
import { judge } from './store/judge.ts';
import { useApp, useAppStore } from './store/useApp.ts';
import { Tabs } from './Tabs.tsx';

/** In a narrow window the right column lies behind the form, each part of it under a tab. */
export function Side() {
  const store = useAppStore();
  const figures = useApp(({ session }) => session.figuresInFront);
  const rightTab = useApp(({ session }) => session.rightTab);
  const faults = useApp((state) => judge(state.history.present).problems.length);
  const front = figures ? rightTab : 'bench';
  return (
    <section className="side left" aria-label="Bench, and what it comes to">
      <Tabs
        label="Left column"
        panel="side-panel"
        front={front}
        tabs={{
          bench: 'Bench',
          ...RIGHT_TABS,
          ...(faults > 0 && { findings: `Findings · ${faults} to mend` }),
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
