import { useShallow } from 'zustand/react/shallow';
import { judge } from '../store/judge.ts';
import { shownPart } from '../store/shownPart.ts';
import type { AppState } from '../store/state.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { usePartSource } from './partContext.ts';
import { stampWords } from './stampWords.ts';

/** The line at the foot: which part is shown, how sound it is, and how the exact kernel is doing. */
export function StatusLine() {
  const store = useAppStore();
  const { building } = usePartSource();
  const shown = useApp(useShallow(shownPart));
  const faults = useApp((state) => judge(state.history.present).problems.length);
  const kernel = useApp(kernelWords);
  const figures = shown.solid?.figures;
  return (
    <footer className="status">
      <span role="status">{stampWords(shown)}</span>
      {figures && (
        <span>
          valid · closed · {figures.throughHoles} {figures.throughHoles === 1 ? 'hole' : 'holes'} through
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
          {shown.trouble.kind === 'design' ? 'It can’t be made.' : shown.trouble.message}{' '}
          <button type="button" className="link" onClick={building.again}>
            Try again
          </button>
        </span>
      )}
      <span className="status-kernel">{kernel}</span>
    </footer>
  );
}

function kernelWords({ kernel: { kernel, threads, trouble } }: AppState): string {
  if (trouble !== undefined) return trouble;
  const state = {
    starting: 'the exact kernel is getting ready',
    ready: 'ready',
    building: 'making the exact solid',
    restarting: 'the exact kernel is starting again',
  }[kernel];
  if (threads === undefined) return state;
  return `${state} · ${threads ? 'several threads' : 'one thread'}`;
}
