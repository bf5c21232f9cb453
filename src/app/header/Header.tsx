import { useState } from 'react';
import { FilesDialog } from '../files/FilesDialog.tsx';
import { openDesign } from '../files/openDesign.ts';
import { saveDesign } from '../files/saveDesign.ts';
import { StartersDialog } from '../starters/StartersDialog.tsx';
import { useApp, useAppStore } from '../store/useApp.ts';
import { Emblem } from './Emblem.tsx';
import { SavedState } from './SavedState.tsx';
import { ThemeChoice } from './ThemeChoice.tsx';
import './header.css';

/** What the design is called and whether it is saved, and everything that is done to it as a whole. */
export function Header() {
  const store = useAppStore();
  const name = useApp(({ history }) => String(history.present.guitar.name));
  const canUndo = useApp(({ history }) => history.past.length > 0);
  const canRedo = useApp(({ history }) => history.future.length > 0);
  const [open, setOpen] = useState<'starters' | 'files'>();
  const close = () => setOpen(undefined);
  return (
    <header className="head">
      <h1>
        <Emblem />
        Pinbridge
      </h1>
      <button
        type="button"
        className="design-name"
        title="Name the bridge"
        onClick={() => store.callTo('guitar.name')}
      >
        {name.trim() === '' ? 'No name' : name}
      </button>
      <SavedState />
      <div className="head-tools">
        <div className="buttons">
          <button type="button" disabled={!canUndo} onClick={store.undo} title="Undo (Ctrl+Z)">
            Undo
          </button>
          <button type="button" disabled={!canRedo} onClick={store.redo} title="Redo (Ctrl+Shift+Z)">
            Redo
          </button>
        </div>
        <div className="buttons">
          <button type="button" onClick={() => setOpen('starters')} title="Designs to begin from">
            Starters
          </button>
          <button type="button" onClick={() => void openDesign(store)} title="Open a design (Ctrl+O)">
            Open<span className="roomy"> a design</span>
          </button>
          <button type="button" onClick={() => void saveDesign(store)} title="Save the design (Ctrl+S)">
            Save<span className="roomy"> the design</span>
          </button>
        </div>
        <ThemeChoice />
        <button type="button" className="main" onClick={() => setOpen('files')}>
          Files for the shop
        </button>
      </div>
      {open === 'starters' && <StartersDialog onClose={close} />}
      {open === 'files' && <FilesDialog onClose={close} />}
    </header>
  );
}
