import type { RefObject } from 'react';
import { useApp, useAppStore } from '../store/useApp.ts';

const LEAST = 0.25;
const MOST = 0.8;
const USUAL = 0.56;
const KEY_STEP = 0.04;

/** The line between picture and drawing: dragged, or moved by arrow keys; a double press puts it back. */
export function ShareHandle({ column }: { column: RefObject<HTMLElement | null> }) {
  const store = useAppStore();
  const share = useApp(({ session }) => session.share);
  const set = (to: number) => store.setSession({ share: Math.min(MOST, Math.max(LEAST, to)) });
  return (
    <hr
      className="share-handle"
      aria-orientation="horizontal"
      aria-label="Height of the picture"
      aria-valuemin={100 * LEAST}
      aria-valuemax={100 * MOST}
      aria-valuenow={Math.round(100 * share)}
      tabIndex={0}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={(event) => {
        const box = column.current?.getBoundingClientRect();
        if (!box || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
        set((event.clientY - box.top) / box.height);
      }}
      onDoubleClick={() => set(USUAL)}
      onKeyDown={(event) => {
        if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
        event.preventDefault();
        set(share + (event.key === 'ArrowUp' ? -KEY_STEP : KEY_STEP));
      }}
    />
  );
}
