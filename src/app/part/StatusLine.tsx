import { useShallow } from 'zustand/react/shallow';
import { sayFailure } from '../client/clientError.ts';
import { judge } from '../store/judge.ts';
import { shownPart } from '../store/shownPart.ts';
import type { AppState } from '../store/state.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { usePartSource } from './partContext.ts';

/** The line at the foot: how sound the exact solid is, what is amiss, and how its making is doing. */
export function StatusLine() {
  const store = useAppStore();
  const { building } = usePartSource();
  const shown = useApp(useShallow(shownPart));
  const faults = useApp((state) => judge(state.history.present).problems.length);
  const kernel = useApp(kernelWords);
  const threads = useApp(threadWords);
  const figures = shown.solid?.figures;
  return (
    <footer className="status">
      {figures && (
        <span>
          sound, one piece, {figures.throughHoles} {figures.throughHoles === 1 ? 'hole' : 'holes'} through
        </span>
      )}
      {faults > 0 && (
        <button
          type="button"
          className="link amiss"
          onClick={() => store.setSession({ figuresInFront: true })}
        >
          {faults === 1 ? 'one thing to mend' : `${faults} things to mend`}
        </button>
      )}
      {shown.trouble && shown.trouble.kind !== 'superseded' && (
        <span className="amiss">
          {shown.trouble.kind === 'design' ? 'It can’t be made.' : sayFailure(shown.trouble)}{' '}
          <button type="button" className="link" onClick={building.again}>
            Try again
          </button>
        </span>
      )}
      <span className="status-kernel" title={threads}>
        {kernel}
      </span>
    </footer>
  );
}

function kernelWords({ kernel: { kernel, trouble } }: AppState): string {
  if (trouble !== undefined) return trouble;
  return {
    starting: 'getting ready to make the exact solid',
    ready: 'ready',
    building: 'making the exact solid',
    restarting: 'getting ready again to make the exact solid',
  }[kernel];
}

/** What a slow machine's owner may want to know. */
function threadWords({ kernel: { threads } }: AppState): string | undefined {
  return threads === undefined ? undefined : `worked out in ${threads ? 'several threads' : 'one thread'}`;
}
