import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import type { DesignText } from '../../../src/design/design.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import type { Finding } from '../../../src/report/findings/finding.ts';
import { judgedOf } from '../../../src/report/findings/judgedOf.ts';
import { RULES } from '../../../src/report/findings/rules.ts';
import { type Changes, change } from '../../support/change.ts';

/** The initial design, its saddle showing so much that no rule has more than a note to say, with some fields changed. */
export const sound = (changes: Changes = {}): DesignText =>
  change(initialDesign(), { 'saddle.showing': 4.05, ...changes });

/** The same, judged. */
export const judgedWith = (changes: Changes = {}) => judgedOf(acceptDesign(sound(changes)));

/** What one rule finds of it. */
export function foundBy(id: string, changes: Changes): Finding | undefined {
  const rule = RULES.find((one) => one.id === id);
  if (!rule) throw new Error(`there is no rule ${id}`);
  return rule.judge(judgedWith(changes));
}
