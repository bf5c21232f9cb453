import { RightColumn } from './figures/RightColumn.tsx';
import { Form } from './form/Form.tsx';
import { judge } from './store/judge.ts';
import { useApp, useAppStore } from './store/useApp.ts';

/** In a narrow window the right column lies behind the form, each under its tab. */
export function Side() {
  const store = useAppStore();
  const figures = useApp(({ session }) => session.figuresInFront);
  const faults = useApp((state) => judge(state.history.present).problems.length);
  const tab = (front: boolean, words: string) => (
    <button
      type="button"
      role="tab"
      id={front ? 'tab-figures' : 'tab-bench'}
      aria-selected={figures === front}
      aria-controls="side-panel"
      tabIndex={figures === front ? 0 : -1}
      onClick={() => store.setSession({ figuresInFront: front })}
      onKeyDown={(event) => {
        if (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') return;
        store.setSession({ figuresInFront: !figures });
        document.getElementById(figures ? 'tab-bench' : 'tab-figures')?.focus();
      }}
    >
      {words}
    </button>
  );
  return (
    <section className="side left" aria-label="Bench and figures">
      <div className="tabs" role="tablist" aria-label="Left column">
        {tab(false, 'Bench')}
        {tab(true, faults > 0 ? `Figures · ${faults} to mend` : 'Figures')}
      </div>
      <div id="side-panel" role="tabpanel" aria-labelledby={figures ? 'tab-figures' : 'tab-bench'}>
        {figures ? <RightColumn /> : <Form />}
      </div>
    </section>
  );
}
