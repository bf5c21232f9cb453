import { useRef } from 'react';
import { Guard } from '../Guard.tsx';
import { useApp } from '../store/useApp.ts';
import { Caption } from './Caption.tsx';
import './middle.css';
import { PartView } from './PartView.tsx';
import { PlanView } from './PlanView.tsx';
import { ShareHandle } from './ShareHandle.tsx';

/** The middle column: the part above, its drawing below, and a handle between them. */
export function Middle() {
  const column = useRef<HTMLElement>(null);
  const document = useApp(({ history }) => history.present);
  const share = useApp(({ session }) => session.share);
  return (
    <main
      className="middle"
      ref={column}
      style={{ gridTemplateRows: `minmax(0, ${share}fr) auto auto minmax(0, ${1 - share}fr)` }}
    >
      <section className="picture" aria-label="The part">
        <Guard what="The picture" again={document}>
          <PartView />
        </Guard>
      </section>
      <Caption />
      <ShareHandle column={column} />
      <section className="sheet" aria-label="Plan and elevation">
        <Guard what="The drawing" again={document}>
          <PlanView />
        </Guard>
      </section>
    </main>
  );
}
