/** One thing wrong with a design, addressed so that a form, a command line and a file loader can all show it. */
export interface Problem {
  /** What kind of thing is wrong; stable, for programs. */
  readonly code:
    | 'unknown-field'
    | 'missing-field'
    | 'not-a-value'
    | 'wrong-unit'
    | 'out-of-range'
    | 'not-a-choice'
    | 'does-not-fit'
    | 'not-a-design'
    | 'newer-version';
  /** Where: `group.field`, or '' for the whole design. */
  readonly path: string;
  /** What was given, as text. */
  readonly value: string;
  /** What is allowed, in a few words with units. */
  readonly allowed: string;
  /** What to do about it. */
  readonly remedy: string;
}

/** A design that can't be made as given. Carries every problem found, never only the first. */
export class DesignError extends Error {
  override readonly name = 'DesignError';
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map(sayProblem).join('\n'));
  }
}

/** One line for a person: where, what was given, what is allowed, what to do. */
export function sayProblem(p: Problem): string {
  const where = p.path === '' ? 'design' : p.path;
  return `${where}: ${p.value} is not possible; allowed: ${p.allowed}. ${p.remedy}`;
}

/** The problem of two or more dimensions that can't stand together. */
export function misfit(path: string, value: number | string, allowed: string, remedy: string): Problem {
  const given = typeof value === 'number' ? `${roundForReading(value)}` : value;
  return { code: 'does-not-fit', path, value: given, allowed, remedy };
}

/** A number as a person would write it at the bench: at most two decimals. */
export function roundForReading(value: number): number {
  return Math.round(value * 100) / 100;
}
