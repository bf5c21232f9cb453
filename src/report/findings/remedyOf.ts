import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Typed } from '../../design/design.ts';
import type { Finding } from './finding.ts';
import { changesOf, HUNDREDTH, type Knob, knobAt } from './knob.ts';
import { nearest, type Search } from './nearest.ts';
import { remedyWords } from './remedyWords.ts';
import { type Outcome, trialOf } from './trial.ts';
import { withChanges } from './withChanges.ts';

/** One number that mends a finding. */
export interface Remedy {
  readonly path: string;
  /** In the field's own unit: on a whole step of the field, or a hundredth. */
  readonly value: number;
  /** What to do, in a few words. */
  readonly text: string;
  /** The edits to the design's text that do it: path → what is typed. */
  readonly changes: Readonly<Record<string, Typed>>;
  /** What it costs: findings that it brings, warnings or that the action comes out otherwise. */
  readonly price: readonly Finding[];
}

/**
 * The change of a single number that removes a finding: of the numbers that the finding names, in its order, the nearest
 * value for which the design can still be made and no new error appears; one without a price goes before all others.
 * Undefined when there is none. It is searched for by trial, so it is worked out when it is asked for.
 */
export function remedyOf(accepted: AcceptedDesign, finding: Finding): Remedy | undefined {
  const search = remedySearch(accepted, finding);
  for (;;) {
    const { done, value } = search.next();
    if (done) return value;
  }
}

/** `remedyOf` in steps: it pauses before each trial. */
export function* remedySearch(accepted: AcceptedDesign, finding: Finding): Search<Remedy | undefined> {
  const knobs = finding.mends.flatMap((path) => knobAt(accepted, path) ?? []);
  const attempt = trialOf(accepted, finding);
  const known = new Map<string, Outcome>();
  const trial = (knob: Knob, value: number): Outcome => {
    const key = `${knob.path} ${value}`;
    const outcome = known.get(key) ?? attempt(withChanges(accepted.text, changesOf(knob, value)));
    known.set(key, outcome);
    return outcome;
  };
  for (const wanted of ['clean', 'priced'] as const) {
    for (const fine of [false, true]) {
      for (const knob of knobs) {
        const value = yield* nearest(
          knob,
          fine ? HUNDREDTH : knob.field.step,
          (tried) => trial(knob, tried).worth,
          (worth) => worth === 'clean' || worth === wanted,
        );
        if (value === undefined) continue;
        const { path } = knob;
        const { price } = trial(knob, value);
        return { path, value, text: remedyWords(path, value), changes: changesOf(knob, value), price };
      }
    }
  }
  return undefined;
}
