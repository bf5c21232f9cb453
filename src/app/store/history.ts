import type { DesignText } from '../../design/design.ts';

/** The documents behind and ahead of the present one. */
export interface History {
  readonly past: readonly DesignText[];
  readonly present: DesignText;
  readonly future: readonly DesignText[];
  /** The step that the next change of the same field still belongs to. */
  readonly step: { readonly path: string; readonly at: number; readonly held: boolean } | undefined;
}

/** Documents kept behind the present one. A document is a few kilobytes. */
const MOST = 300;
/** Typing that pauses for longer than this begins a new step, ms. */
const PAUSE = 1200;

export function begin(present: DesignText): History {
  return { past: [], present, future: [], step: undefined };
}

/**
 * The history after a change of one field. Changes of the same field in quick succession, or while the field is held,
 * make one step together.
 * @param at time of the change, ms
 */
export function change(history: History, present: DesignText, path: string, at: number): History {
  const { step } = history;
  const same = step?.path === path && (step.held || at - step.at <= PAUSE) && history.past.length > 0;
  return {
    past: same ? history.past : [...history.past, history.present].slice(-MOST),
    present,
    future: [],
    step: { path, at, held: same && step.held },
  };
}

/** A change of many fields at once: always a step of its own. */
export function replace(history: History, present: DesignText): History {
  return { ...change(history, present, '', 0), step: undefined };
}

/** Every change of this field is one step from now on, however long it takes, until the step is closed. */
export function hold(history: History, path: string, at: number): History {
  // a document of its own to hold on to: the first change must not join a step that typing left open
  return {
    ...history,
    step: { path, at, held: true },
    past: [...history.past, history.present].slice(-MOST),
  };
}

/** Ends the open step: the next change begins a new one. */
export function closeStep(history: History): History {
  const { past, present, step } = history;
  if (!step) return history;
  // held, but never moved
  const idle = past[past.length - 1] === present;
  return { ...history, past: idle ? past.slice(0, -1) : past, step: undefined };
}

export function undo(history: History): History {
  const closed = closeStep(history);
  const last = closed.past[closed.past.length - 1];
  if (!last) return closed;
  return {
    past: closed.past.slice(0, -1),
    present: last,
    future: [closed.present, ...closed.future],
    step: undefined,
  };
}

export function redo(history: History): History {
  const closed = closeStep(history);
  const [next, ...future] = closed.future;
  if (!next) return closed;
  return { past: [...closed.past, closed.present], present: next, future, step: undefined };
}
