import { type AcceptedDesign, acceptDesign } from '../../design/acceptDesign.ts';
import type { DesignText } from '../../design/design.ts';
import { DesignError, type Problem } from '../../design/problem.ts';
import { placeOf } from './fieldAt.ts';

/** A design that can be made, with its curves and how it fits its guitar. */
export type Accepted = AcceptedDesign;

export type Judgement =
  | { readonly ok: true; readonly accepted: Accepted; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly accepted: undefined; readonly problems: readonly Problem[] };

const NONE: readonly Problem[] = [];
const judged = new WeakMap<DesignText, Judgement>();

/** Whether a design can be made as typed, and all that is wrong with it. Worked out once for each document. */
export function judge(text: DesignText): Judgement {
  const known = judged.get(text);
  if (known) return known;
  const judgement = judgeAnew(text);
  judged.set(text, judgement);
  return judgement;
}

function judgeAnew(text: DesignText): Judgement {
  try {
    return { ok: true, accepted: { ...acceptDesign(text), text }, problems: NONE };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    return { ok: false, accepted: undefined, problems: error.problems };
  }
}

const sorted = new WeakMap<Judgement, ReadonlyMap<string, readonly Problem[]>>();

/** The problems of one field, its list's entries included. The same array as long as the document is the same. */
export function problemsAt(text: DesignText, path: string): readonly Problem[] {
  const judgement = judge(text);
  if (judgement.ok) return NONE;
  let byPath = sorted.get(judgement);
  if (!byPath) {
    byPath = sortByField(judgement.problems);
    sorted.set(judgement, byPath);
  }
  return byPath.get(path) ?? NONE;
}

function sortByField(problems: readonly Problem[]): ReadonlyMap<string, readonly Problem[]> {
  const byPath = new Map<string, Problem[]>();
  for (const problem of problems) {
    const path = placeOf(problem.path)?.path ?? '';
    byPath.set(path, [...(byPath.get(path) ?? []), problem]);
  }
  return byPath;
}
