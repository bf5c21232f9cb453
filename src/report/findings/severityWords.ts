import type { Severity } from './finding.ts';

/** What a severity is called, of one and of several. */
const WORDS: Readonly<Record<Severity, readonly [one: string, several: string]>> = {
  error: ['can’t work', 'can’t work'],
  warning: ['warning', 'warnings'],
  note: ['note', 'notes'],
};

export const severityWord = (severity: Severity): string => WORDS[severity][0];

/** How many findings of each severity, errors first: `2 warnings, 1 note`. Empty when there are none. */
export function sayCounts(found: readonly { readonly severity: Severity }[]): string {
  return (['error', 'warning', 'note'] as const)
    .flatMap((severity) => {
      const count = found.filter((one) => one.severity === severity).length;
      return count === 0 ? [] : [`${count} ${WORDS[severity][count === 1 ? 0 : 1]}`];
    })
    .join(', ');
}
