import type { Weighed } from '../../report/compare/comparison.ts';
import { type Against, referenceOf } from '../compare/referenceOf.ts';
import { useApp } from '../store/useApp.ts';
import { figuresOf } from './figuresOf.ts';

/** The design that is compared with, and what it comes to. */
export function useReference(): Against & { readonly reference: Weighed } {
  const chosen = useApp(({ session }) => session.reference);
  const against = referenceOf(chosen);
  return { ...against, reference: figuresOf(against.accepted) };
}
