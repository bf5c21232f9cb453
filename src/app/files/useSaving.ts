import { useState } from 'react';
import type { WrittenFile } from '../../../workers/protocol.ts';
import { download } from './download.ts';
import { notWritten } from './notWritten.ts';

interface Outcome {
  readonly ok: boolean;
  readonly words: string;
}

/** Writes files, one at a time, hands them to the browser and says how it went. */
export function useSaving(): {
  /** What is being written. */
  readonly saving: string | undefined;
  readonly outcome: Outcome | undefined;
  readonly save: (what: string, make: () => Promise<WrittenFile>) => Promise<void>;
} {
  const [saving, setSaving] = useState<string>();
  const [outcome, setOutcome] = useState<Outcome>();
  const save = async (what: string, make: () => Promise<WrittenFile>) => {
    setSaving(what);
    setOutcome(undefined);
    const began = performance.now();
    try {
      const { name, bytes } = await make();
      download(name, bytes);
      const seconds = ((performance.now() - began) / 1000).toFixed(1);
      setOutcome({
        ok: true,
        words: `${name} is written: ${Math.ceil(bytes.length / 1024)} kB in ${seconds} s.`,
      });
    } catch (error) {
      setOutcome({ ok: false, words: notWritten(error) });
    }
    setSaving(undefined);
  };
  return { saving, outcome, save };
}
