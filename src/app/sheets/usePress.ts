import { useCallback, useEffect, useState } from 'react';
import { loadPress } from './loadPress.ts';
import type { Press } from './press.ts';

/** The press as soon as it is there; `trouble` says why it is not, `again` tries once more. */
export function usePress(): {
  readonly press: Press | undefined;
  readonly trouble: string | undefined;
  readonly again: () => void;
} {
  const [press, setPress] = useState<Press>();
  const [trouble, setTrouble] = useState<string>();
  const again = useCallback(() => {
    setTrouble(undefined);
    loadPress().then(setPress, (error: Error) => setTrouble(error.message));
  }, []);
  useEffect(again, [again]);
  return { press, trouble, again };
}
