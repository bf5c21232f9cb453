import { type ReactNode, useEffect, useId, useRef } from 'react';
import './dialog.css';

interface Props {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A dialog over the page; the Escape key, its own button and a press beside it close it. */
export function Dialog({ title, onClose, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const { current } = dialog;
    current?.showModal();
    return () => current?.close();
  }, []);
  return (
    <dialog ref={dialog} aria-labelledby={id} onClose={onClose} {...{ closedby: 'any' }}>
      <div className="dialog-sheet">
        <header>
          <h2 id={id}>{title}</h2>
          <button type="button" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </header>
        {children}
      </div>
    </dialog>
  );
}
