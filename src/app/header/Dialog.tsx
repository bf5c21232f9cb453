import { type ReactNode, useEffect, useId, useRef } from 'react';
import './dialog.css';

interface Props {
  readonly title: string;
  readonly wide?: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A dialog over the page; the Escape key, its own button and a press beside it close it. */
export function Dialog({ title, wide = false, onClose, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const { current } = dialog;
    current?.showModal();
    return () => current?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={wide ? 'wide' : undefined}
      aria-labelledby={id}
      onClose={onClose}
      {...{ closedby: 'any' }}
    >
      <div className="dialog-sheet">
        <div className="dialog-head">
          <h2 id={id}>{title}</h2>
          <button type="button" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </div>
        {children}
      </div>
    </dialog>
  );
}
