import { useEffect, useState } from 'react';
import { Dialog } from '../header/Dialog.tsx';
import { useAppStore } from '../store/useApp.ts';
import { keepGuitar } from './keepGuitar.ts';
import { StarterPicture } from './StarterPicture.tsx';
import './starters.css';
import { loadStarters, type Starter } from './starters.ts';

/** Designs to start from. Taking one can be undone. */
export function StartersDialog({ onClose }: { onClose: () => void }) {
  const store = useAppStore();
  const [starters, setStarters] = useState<readonly Starter[]>();
  const [keeping, setKeeping] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  useEffect(() => {
    loadStarters().then(setStarters, (error: unknown) => setTrouble(String(error)));
  }, []);
  const take = (starter: Starter) => {
    const { present } = store.getState().history;
    store.open(keeping ? keepGuitar(starter.text, present) : starter.text);
    store.setSession({ file: undefined });
    onClose();
  };
  return (
    <Dialog title="Starters" wide onClose={onClose}>
      <p>
        Designs to begin from, all invented for Pinbridge. Taking one replaces the design on the bench; Undo
        brings that back.
      </p>
      <label className="starters-keep">
        <input type="checkbox" checked={keeping} onChange={(event) => setKeeping(event.target.checked)} />
        Keep my guitar, action and strings
      </label>
      {trouble !== undefined && <p className="amiss">The starters can’t be read: {trouble}</p>}
      {!starters && trouble === undefined && <p>Reading …</p>}
      <ul className="starters">
        {starters?.map((starter) => (
          <li key={starter.name}>
            <button type="button" onClick={() => take(starter)}>
              <StarterPicture curves={starter.curves} />
              <strong>{starter.name}</strong>
              <span>{starter.about}</span>
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
