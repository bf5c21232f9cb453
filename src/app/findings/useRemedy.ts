import { useEffect, useState } from 'react';
import type { Finding } from '../../report/findings/finding.ts';
import { type Remedy, remedySearch } from '../../report/findings/remedyOf.ts';
import type { Accepted } from '../store/judge.ts';

/** How long a design rests before a remedy is looked for, and how long is looked before the page has its turn, ms. */
const [REST, TURN] = [200, 8];

/** `looking`, or what was found: undefined where no single number mends it. */
export type Looked = 'looking' | { readonly remedy: Remedy | undefined };

/** What mends a finding, looked for in small turns so that the page stays quick; given up when the design changes. */
export function useRemedy(accepted: Accepted, finding: Finding): Looked {
  const [found, setFound] = useState<{ readonly of: Finding; readonly remedy: Remedy | undefined }>();
  useEffect(() => {
    const search = remedySearch(accepted, finding);
    const look = () => {
      const end = performance.now() + TURN;
      do {
        const { done, value } = search.next();
        if (done) {
          setFound({ of: finding, remedy: value });
          return;
        }
      } while (performance.now() < end);
      turn = setTimeout(look);
    };
    let turn = setTimeout(look, REST);
    return () => clearTimeout(turn);
  }, [accepted, finding]);
  return found?.of === finding ? found : 'looking';
}
