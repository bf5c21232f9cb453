import type { Holes } from '../../../models/curves/curves.ts';
import type { Failure } from '../../../workers/protocol.ts';
import type { DesignText } from '../../design/design.ts';
import type { Client } from '../client/client.ts';
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
  /** Asks again for the present design, say after the kernel was lost. */
  readonly again: () => void;
  readonly stop: () => void;
}

/**
 * Keeps the part in step with the document: the draft at once on every change, the exact solid when the design has
 * rested. While the document can't be made, that goes for the last good design. Each answer is kept with what it was asked for, so that an older one is never taken for current.
 */
export function keepBuilding(store: AppStore, client: Client): Building {
  let pause: ReturnType<typeof setTimeout> | undefined;
  let seen: Wanted | undefined;
  let stopped = false;

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
      if (!stopped) store.setPart({ solid: { ...wanted, answer }, newest: 'solid' });
    } catch (error) {
      failed(wanted, error);
    }
  };

  const build = () => {
    const { history, lastGood, session, part } = store.getState();
    const text = judge(history.present).ok ? history.present : lastGood?.text;
    if (!text) return;
    const wanted = { text, holes: session.holes };
    if (sameAsked(wanted, seen)) return;
    seen = wanted;
    clearTimeout(pause);
    if (sameAsked(wanted, part.solid)) return;
    void draft(wanted);
    pause = setTimeout(() => void solid(wanted), PAUSE);
  };

  const unsubscribe = store.subscribe(build);
  const unheard = client.onState((kernel) => store.setState({ kernel }));
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
