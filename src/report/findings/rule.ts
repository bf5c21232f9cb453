import type { Finding, Judged } from './finding.ts';

/** What a rule looks at: how the bridge fits its guitar, the wood that is left, how it is made, or what is usual. */
export type About = 'fit' | 'wood' | 'making' | 'usual';

/** One trade rule. */
export interface Rule {
  /** Stable, for programs; its tests' titles carry it. */
  readonly id: string;
  readonly about: About;
  /** What it watches, as one would say it at the bench. */
  readonly watches: string;
  /** Undefined when there is nothing to say. */
  judge(judged: Judged): Finding | undefined;
}

/** A rule from what it finds; the finding bears the rule's id. */
export function rule({
  judge,
  ...rest
}: Omit<Rule, 'judge'> & { judge(judged: Judged): Omit<Finding, 'id'> | undefined }): Rule {
  return {
    ...rest,
    judge: (judged) => {
      const found = judge(judged);
      return found && { id: rest.id, ...found };
    },
  };
}

/** For what is held so in the trade without anybody to name for it. */
export const PRACTICE = 'Common practice, no source.';
