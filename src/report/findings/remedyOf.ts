import { type AcceptedDesign, acceptDesign } from '../../design/acceptDesign.ts';
import { applies } from '../../design/applies.ts';
import type { DesignText, Typed } from '../../design/design.ts';
import { isNumberField, type NumberField } from '../../design/fields/kinds.ts';
import { fieldsOf, GROUPS } from '../../design/fields.ts';
import { DesignError } from '../../design/problem.ts';
import type { SolvablePath } from '../../trade/fit/placeDesign.ts';
import type { Finding, Judged } from './finding.ts';
import { judgedOf } from './judgedOf.ts';
import { remedyWords } from './remedyWords.ts';
import { RULES } from './rules.ts';
import { volumeEstimate } from './volumeEstimate.ts';
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
}

/**
 * The change of a single number that removes a finding: of the numbers that the finding names, in its order, the nearest
 * value for which the design can still be made and no new error appears; one that brings no new warning goes before all
 * others. Undefined when there is none. It is searched for by trial, so it is worked out when it is asked for.
 */
export function remedyOf(accepted: AcceptedDesign, finding: Finding): Remedy | undefined {
  const knobs = finding.mends.flatMap((path) => knobAt(accepted, path) ?? []);
  const trial = trialOf(accepted, finding);
  for (const wanted of ['clean', 'sound'] as const) {
    for (const fine of [false, true]) {
      for (const knob of knobs) {
        const value = nearest(
          knob,
          fine ? HUNDREDTH : knob.field.step,
          (tried) => trial(knob, tried),
          (worth) => worth === 'clean' || worth === wanted,
        );
        if (value !== undefined) {
          const { path } = knob;
          return { path, value, text: remedyWords(path, value), changes: changesOf(knob, value) };
        }
      }
    }
  }
  return undefined;
}

const HUNDREDTH = 0.01;

/** A number of the design that may be changed, and where it stands. */
interface Knob {
  readonly path: string;
  readonly field: NumberField;
  readonly now: number;
  /** What the guitar asks for, where something else is set by hand. */
  readonly asked: number | undefined;
  /** A number that was solved is set by hand from now on: the choice that says so. */
  readonly choice: string | undefined;
}

/** The number at a path as a knob; undefined where it has no say in this design, nor could have if set by hand. */
function knobAt({ text, design, fit }: AcceptedDesign, path: string): Knob | undefined {
  const [group = '', key = ''] = path.split('.');
  const name = GROUPS.find((one) => one === group);
  const field = name && fieldsOf(name)[key];
  if (!name || !field || !isNumberField(field) || name === 'limits') return undefined;
  const choice = applies(path, text) || field.by === undefined ? undefined : `${group}.${field.by}`;
  if (!applies(path, choice ? withChanges(text, { [choice]: 'set' }) : text)) return undefined;
  const solved = fit.solved[path as SolvablePath];
  const now = (design as unknown as Readonly<Record<string, Readonly<Record<string, number>>>>)[name]?.[key];
  if (now === undefined) return undefined;
  return { path, field, now, choice, asked: solved?.by === 'set' ? solved.solved : undefined };
}

function changesOf({ path, choice }: Knob, value: number): Remedy['changes'] {
  return { ...(choice && { [choice]: 'set' }), [path]: value };
}

/**
 * What a changed design is worth: the finding is gone and nothing is worse (`clean`); it is gone, but there is a new warning
 * (`sound`) or a new error (`worse`); it stays; or the design can't be made.
 */
type Worth = 'clean' | 'sound' | 'worse' | 'stays' | 'refused';

/** Tries a value of a knob; each is tried once. */
function trialOf(accepted: AcceptedDesign, finding: Finding): (knob: Knob, value: number) => Worth {
  const rule = RULES.find(({ id }) => id === finding.id);
  if (!rule) throw new Error(`there is no rule ${finding.id}`);
  const now = judgedOf(accepted);
  // to weigh the wood takes longer than all else together: only what is about its mass is judged by it
  const others = RULES.filter(({ id }) => id !== finding.id && id !== 'mass');
  const bad = (judged: Judged) => others.flatMap((other) => other.judge(judged) ?? []);
  const before = new Set(bad(now).map(({ id, severity }) => `${severity} ${id}`));
  const stays = (judged: Judged) =>
    rule.judge(roughly(judged, now)) !== undefined || rule.judge(judged) !== undefined;
  const known = new Map<string, Worth>();

  const worth = (text: DesignText): Worth => {
    const changed = accept(text);
    if (!changed) return 'refused';
    const judged = judgedOf(changed);
    if (stays(judged)) return 'stays';
    const fresh = bad(judged).filter(({ id, severity }) => !before.has(`${severity} ${id}`));
    if (fresh.some(({ severity }) => severity === 'error')) return 'worse';
    return fresh.some(({ severity }) => severity === 'warning') ? 'sound' : 'clean';
  };
  return (knob, value) => {
    const key = `${knob.path} ${value}`;
    const found = known.get(key) ?? worth(withChanges(accepted.text, changesOf(knob, value)));
    known.set(key, found);
    return found;
  };
}

/** The same with its mass estimated from that of a near design: what is far off need not be weighed. */
function roughly(judged: Judged, near: Judged): Judged {
  const wood = ({ accepted: { curves, design } }: Judged) => volumeEstimate(curves) * design.timber.density;
  return {
    accepted: judged.accepted,
    report: judged.report,
    get massG() {
      return (near.massG * wood(judged)) / wood(near);
    },
  };
}

function accept(text: DesignText): AcceptedDesign | undefined {
  try {
    return acceptDesign(text);
  } catch (error) {
    if (error instanceof DesignError) return undefined;
    throw error;
  }
}

/** How far from where it stands a number is tried, in steps: near ones closely, far ones by halves more. */
const AWAY = [1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64];

/**
 * The value of a knob, on a whole step, that passes and lies nearest to where it stands: tried further and further away
 * to both sides, then narrowed down between the last that failed and the first that passed. Beyond a value that can't be
 * made nothing is looked for, nor on the other side of one where the finding is gone. What the guitar asks for goes
 * before all.
 */
function nearest(
  { now, asked, field: { min, max } }: Knob,
  step: number,
  trial: (value: number) => Worth,
  passes: (worth: Worth) => boolean,
): number | undefined {
  const asRefused = (value: number): Worth => (value < min || value > max ? 'refused' : trial(value));
  if (asked !== undefined) {
    const round = Math.round(asked / HUNDREDTH) * HUNDREDTH;
    if (passes(asRefused(cleaned(round)))) return cleaned(round);
  }
  let sides = [1, -1].map((way) => {
    const from = way === 1 ? Math.floor(now / step + 1e-9) : Math.ceil(now / step - 1e-9);
    return { at: (steps: number) => cleaned((from + way * steps) * step), failed: 0 };
  });
  for (const away of AWAY) {
    for (const side of [...sides]) {
      if (!sides.includes(side)) continue;
      const tried = asRefused(side.at(away));
      const worth = (steps: number) => asRefused(side.at(steps));
      const found = passes(tried)
        ? away
        : tried === 'refused'
          ? beforeRefusal(side.failed, away, worth, passes)
          : undefined;
      if (found !== undefined) return side.at(narrowed(side.failed, found, (n) => passes(worth(n))));
      if (tried === 'refused') sides = sides.filter((one) => one !== side);
      else if (tried !== 'stays') sides = [side];
      side.failed = away;
    }
  }
  return undefined;
}

/** Without what binary fractions add: 0.1 · 3 is a little more than 0.3 to a computer. */
const cleaned = (value: number) => Math.round(value * 1e6) / 1e6;

/** Steps that pass between those that fail and those that can't be made: the last way before the latter. */
function beforeRefusal(
  failed: number,
  refused: number,
  worth: (steps: number) => Worth,
  passes: (worth: Worth) => boolean,
): number | undefined {
  let [low, high] = [failed, refused];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const found = worth(middle);
    if (passes(found)) return middle;
    if (found === 'refused') high = middle;
    else low = middle;
  }
  return undefined;
}

/** The fewest steps that pass, between those that fail and those that pass. */
function narrowed(failed: number, passing: number, passes: (steps: number) => boolean): number {
  let [bad, good] = [failed, passing];
  while (good - bad > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (passes(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
