import type { Holes } from '../../../models/curves/curves.ts';
import type { Failure } from '../../../workers/protocol.ts';
import type { DesignText } from '../../design/design.ts';
import type { Client, ClientState } from '../client/client.ts';
import { ClientError } from '../client/clientError.ts';
import { judge } from '../store/judge.ts';
import type { AppStore } from '../store/store.ts';

/** How long a design must rest before the exact solid is asked for, ms. */
const PAUSE = 250;

interface Wanted {
  readonly text: DesignText;
  readonly holes: Holes;
}

export interface Building {
  /** Asks again for the present design, say after the kernel was lost on it twice. */
  readonly again: () => void;
  readonly stop: () => void;
}

/**
 * Keeps the part in step with the document: the draft at once on every change, the exact solid when the design has
 * rested. While the document can't be made, that goes for the last good design. Each answer is kept with what it was
 * asked for, so that an older one is never taken for current. A solid that was lost with its worker is asked for again
 * when the next worker is ready: once for a design, since it may be what the kernel dies of; then it takes a press.
 */
export function keepBuilding(store: AppStore, client: Client): Building {
  let pause: ReturnType<typeof setTimeout> | undefined;
  let seen: Wanted | undefined;
  let stopped = false;
  /** The solid that waits for the next worker, and the designs that had their second chance. */
  let lost: Wanted | undefined;
  const askedAgain = new WeakSet<DesignText>();

  const failed = (wanted: Wanted, error: unknown) => {
    const failure: Failure =
      error instanceof ClientError ? error.failure : { kind: 'stopped', message: String(error) };
    if (failure.kind !== 'superseded' && !stopped) store.setPart({ trouble: { ...wanted, answer: failure } });
  };

  const draft = async (wanted: Wanted) => {
    try {
      const answer = await client.draft(wanted.text, wanted.holes);
      if (!stopped) store.setPart({ draft: { ...wanted, answer }, newest: 'draft' });
    } catch (error) {
      failed(wanted, error);
    }
  };

  const solid = async (wanted: Wanted) => {
    try {
      const answer = await client.solid(wanted.text, wanted.holes);
      if (stopped) return;
      const { trouble } = store.getState().part;
      store.setPart({
        solid: { ...wanted, answer },
        newest: 'solid',
        trouble: sameAsked(wanted, trouble) ? undefined : trouble,
      });
    } catch (error) {
      const workerLost = error instanceof ClientError && error.failure.kind === 'stopped';
      if (!workerLost || askedAgain.has(wanted.text)) failed(wanted, error);
      else if (sameAsked(wanted, seen)) lost = wanted;
    }
  };

  const hear = (kernel: ClientState) => {
    store.setState({ kernel });
    if (!lost || kernel.kernel === 'starting' || kernel.kernel === 'restarting') return;
    const wanted = lost;
    lost = undefined;
    askedAgain.add(wanted.text);
    void solid(wanted);
  };

  const build = () => {
    const { history, lastGood, session, part } = store.getState();
    const text = judge(history.present).ok ? history.present : lastGood?.text;
    if (!text) return;
    const wanted = { text, holes: session.holes };
    if (sameAsked(wanted, seen)) return;
    seen = wanted;
    lost = undefined;
    clearTimeout(pause);
    if (sameAsked(wanted, part.solid)) return;
    void draft(wanted);
    pause = setTimeout(() => void solid(wanted), PAUSE);
  };

  const unsubscribe = store.subscribe(build);
  const unheard = client.onState(hear);
  build();
  return {
    again: () => {
      seen = undefined;
      store.setPart({ trouble: undefined });
      build();
    },
    stop: () => {
      stopped = true;
      clearTimeout(pause);
      unsubscribe();
      unheard();
    },
  };
}

function sameAsked(a: Wanted, b: Wanted | undefined): boolean {
  return a.text === b?.text && a.holes === b.holes;
}
