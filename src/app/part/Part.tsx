import { useRef } from 'react';
import { Guard } from '../Guard.tsx';
import { useApp } from '../store/useApp.ts';
import { Caption } from './Caption.tsx';
import { PartView } from './PartView.tsx';
import { PlanView } from './PlanView.tsx';
import { ShareHandle } from './ShareHandle.tsx';
import './part.css';

/**
 * The part above, its drawing below, and a handle between them.
 * @param behind another view lies over it: it stays as it is, unseen, and nothing of it is built anew
 */
export function Part({ behind }: { behind: boolean }) {
  const column = useRef<HTMLDivElement>(null);
  const document = useApp(({ history }) => history.present);
  const share = useApp(({ session }) => session.share);
  return (
    <div
      className={behind ? 'part behind' : 'part'}
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
    </div>
  );
}
