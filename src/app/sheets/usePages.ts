import { useMemo, useRef } from 'react';
import { useSettled } from '../figures/useSettled.ts';
import type { Accepted } from '../store/judge.ts';
import type { Page, Press, SheetsChoice } from './press.ts';

/** How long a design rests before its sheets are drawn anew, ms. */
const REST = 150;

/**
 * The sheets of a design once it has rested, the older ones until then: drawing a set takes a few tenths of a second.
 * `settling`: those given are not yet those of the design.
 */
export function usePages(
  press: Press | undefined,
  accepted: Accepted | undefined,
  choice: SheetsChoice,
): { readonly pages: readonly Page[] | undefined; readonly settling: boolean } {
  const wanted = useMemo(() => ({ accepted, choice }), [accepted, choice]);
  const settled = useSettled(wanted, REST);
  const shown = useMemo(
    () => (press && settled?.accepted ? press.pages(settled.accepted, settled.choice) : undefined),
    [press, settled],
  );
  const last = useRef(shown);
  if (shown) last.current = shown;
  return { pages: last.current, settling: settled !== wanted };
}
