import { Guard } from './Guard.tsx';
import { Making } from './making/Making.tsx';
import { Part } from './part/Part.tsx';
import { Sheets } from './sheets/Sheets.tsx';
import { useApp, useAppStore } from './store/useApp.ts';
import { Tabs } from './Tabs.tsx';
import './middle.css';

/** The middle column: the part, its sheets or its making, with tabs over them. */
export function Middle() {
  const store = useAppStore();
  const front = useApp(({ session }) => session.middle);
  const document = useApp(({ history }) => history.present);
  return (
    <main className="middle">
      <Tabs
        label="Middle column"
        panel="middle-panel"
        front={front}
        tabs={{ part: 'Part', sheets: 'Sheets', making: 'Making' }}
        onTurn={(middle) => store.setSession({ middle })}
      />
      <div id="middle-panel" className="middle-panel" role="tabpanel" aria-labelledby={`tab-${front}`}>
        <Part behind={front !== 'part'} />
        {front === 'sheets' && (
          <Guard what="The sheets" again={document}>
            <Sheets />
          </Guard>
        )}
        {front === 'making' && (
          <Guard what="The job by hand" again={document}>
            <Making />
          </Guard>
        )}
      </div>
    </main>
  );
}
