import { initialDesign } from '../../design/initial.ts';
import { type Accepted, judge } from '../store/judge.ts';
import type { Reference } from '../store/state.ts';

/** What is compared with as long as nothing else is chosen: the design of all defaults. */
export const USUAL: Reference = { name: 'our usual bridge', text: initialDesign() };

/** A design to compare with that can be made. */
export interface Against {
  readonly name: string;
  readonly accepted: Accepted;
}

/** The chosen design, else the usual one. Only a design that can be made is ever chosen. */
export function referenceOf(chosen: Reference | undefined): Against {
  const { name, text } = chosen ?? USUAL;
  const { accepted } = judge(text);
  return accepted ? { name, accepted } : referenceOf(undefined);
}
