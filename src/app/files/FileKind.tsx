import type { ReactNode } from 'react';

interface FileKindProps {
  readonly title: string;
  /** What it is for. */
  readonly what: string;
  /** What the button says. */
  readonly act: string;
  readonly off: boolean;
  readonly onWrite: () => void;
  /** What can be chosen about it. */
  readonly children?: ReactNode;
}

/** One kind of file: what it is for, what can be chosen, and the button that writes it. */
export function FileKind({ title, what, act, off, onWrite, children }: FileKindProps) {
  return (
    <section className="file-kind">
      <div>
        <h4>{title}</h4>
        <p>{what}</p>
        {children}
      </div>
      <button type="button" disabled={off} onClick={onWrite}>
        {act}
      </button>
    </section>
  );
}
