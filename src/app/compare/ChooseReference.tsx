import { useEffect, useState } from 'react';
import { Dialog } from '../header/Dialog.tsx';
import { StarterPicture } from '../starters/StarterPicture.tsx';
import { loadStarters, type Starter } from '../starters/starters.ts';
import '../starters/starters.css';
import type { Reference } from '../store/state.ts';
import { useAppStore } from '../store/useApp.ts';
import { openReference } from './openReference.ts';
import { referenceOf, USUAL } from './referenceOf.ts';
import { takeReference } from './takeReference.ts';

/** Designs to compare with: the usual bridge, the starters, or a file. The design on the bench stays as it is. */
export function ChooseReference({ onClose }: { onClose: () => void }) {
  const store = useAppStore();
  const [starters, setStarters] = useState<readonly Starter[]>();
  const [trouble, setTrouble] = useState<string>();
  useEffect(() => {
    loadStarters().then(setStarters, (error: unknown) =>
      setTrouble(`The starters can’t be read: ${String(error)}`),
    );
  }, []);
  const take = (reference: Reference) => {
    takeReference(store, reference);
    onClose();
  };
  const open = async () => {
    const opened = await openReference();
    if (!opened) return;
    if ('trouble' in opened) setTrouble(opened.trouble);
    else take(opened);
  };
  return (
    <Dialog title="Compare with" wide onClose={onClose}>
      <p>Best a bridge that you built and that has held. The design on the bench stays as it is.</p>
      <p>
        <button type="button" onClick={() => void open()}>
          A design from a file
        </button>
      </p>
      {trouble !== undefined && (
        <p className="amiss" role="alert">
          {trouble}
        </p>
      )}
      {!starters && trouble === undefined && <p>Reading …</p>}
      <ul className="starters compare-with">
        <li>
          <button type="button" onClick={() => take(USUAL)}>
            <StarterPicture curves={referenceOf(USUAL).accepted.curves} />
            <strong>{USUAL.name}</strong>
            <span>Every number at its default</span>
          </button>
        </li>
        {starters?.map(({ name, about, text, curves }) => (
          <li key={name}>
            <button type="button" onClick={() => take({ name, text })}>
              <StarterPicture curves={curves} />
              <strong>{name}</strong>
              <span>{about}</span>
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
