import { useState } from 'react';
import type { FileOptions } from '../../../workers/protocol.ts';
import { usePartSource } from '../part/partContext.ts';
import { useAppStore } from '../store/useApp.ts';
import { download } from './download.ts';
import { notWritten } from './notWritten.ts';

interface Outcome {
  readonly ok: boolean;
  readonly words: string;
}

/** Writes files of the present design, one at a time, and says how it went. */
export function useWriting() {
  const store = useAppStore();
  const { client } = usePartSource();
  const [writing, setWriting] = useState<string>();
  const [done, setDone] = useState<Outcome>();

  const write = async (options: FileOptions) => {
    setWriting(options.format.toUpperCase());
    setDone(undefined);
    const began = performance.now();
    try {
      const { name, bytes } = await client.file(store.getState().history.present, options);
      download(name, bytes);
      const seconds = ((performance.now() - began) / 1000).toFixed(1);
      setDone({
        ok: true,
        words: `${name} is written: ${Math.ceil(bytes.length / 1024)} kB in ${seconds} s.`,
      });
    } catch (error) {
      setDone({ ok: false, words: notWritten(error) });
    }
    setWriting(undefined);
  };
  return { writing, done, write };
}
