import type { Problem } from '../../design/problem.ts';

/** What is allowed and what to do about it, said once where the remedy already says what is allowed. */
export function mend({ allowed, remedy }: Problem): string {
  return remedy.includes(allowed) ? remedy : `Allowed: ${allowed}. ${remedy}`;
}
