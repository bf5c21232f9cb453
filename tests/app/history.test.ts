import { expect, test } from 'vitest';
import {
  begin,
  change,
  closeStep,
  type History,
  hold,
  redo,
  replace,
  undo,
} from '../../src/app/store/history.ts';
import type { DesignText } from '../../src/design/design.ts';
import { initialDesign } from '../../src/design/initial.ts';

/** The initial design under another name, so that documents can be told apart. */
const named = (name: string): DesignText => {
  const text = initialDesign();
  return { ...text, guitar: { ...text.guitar, name } };
};
const names = (history: History) => ({
  past: history.past.map((text) => text.guitar.name),
  present: history.present.guitar.name,
  future: history.future.map((text) => text.guitar.name),
});

test('quick changes of one field make one step; a pause, another field or a closed step begins a new one', () => {
  let history = begin(named('a'));
  history = change(history, named('b'), 'top.tip', 1000);
  history = change(history, named('c'), 'top.tip', 2000);
  history = change(history, named('d'), 'top.tip', 3100);
  expect(names(history)).toEqual({ past: ['a'], present: 'd', future: [] });
  history = change(history, named('e'), 'top.tip', 4400);
  expect(names(history).past).toEqual(['a', 'd']);
  history = change(history, named('f'), 'top.block', 4500);
  expect(names(history).past).toEqual(['a', 'd', 'e']);
  history = change(closeStep(history), named('g'), 'top.block', 4600);
  expect(names(history).past).toEqual(['a', 'd', 'e', 'f']);
});

test('while a field is held, its changes are one step however long they take', () => {
  let history = change(begin(named('a')), named('b'), 'top.tip', 0);
  history = hold(closeStep(history), 'top.tip', 10);
  for (const [at, name] of [
    [20, 'c'],
    [9000, 'd'],
    [20_000, 'e'],
  ] as const) {
    history = change(history, named(name), 'top.tip', at);
  }
  history = closeStep(history);
  expect(names(history)).toEqual({ past: ['a', 'b'], present: 'e', future: [] });
});

test('a field that was held and let go without a change leaves no step', () => {
  const before = change(begin(named('a')), named('b'), 'top.tip', 0);
  const after = closeStep(hold(closeStep(before), 'top.block', 10));
  expect(names(after)).toEqual({ past: ['a'], present: 'b', future: [] });
  expect(names(undo(hold(closeStep(before), 'top.block', 10)))).toEqual({
    past: [],
    present: 'a',
    future: ['b'],
  });
});

test('undo and redo walk the documents, and a change after an undo drops those ahead', () => {
  let history = begin(named('a'));
  history = change(history, named('b'), 'top.tip', 0);
  history = replace(history, named('c'));
  history = undo(undo(history));
  expect(names(history)).toEqual({ past: [], present: 'a', future: ['b', 'c'] });
  expect(undo(history)).toEqual(history);
  history = redo(history);
  expect(names(history)).toEqual({ past: ['a'], present: 'b', future: ['c'] });
  history = change(history, named('d'), 'top.tip', 1);
  expect(names(history)).toEqual({ past: ['a', 'b'], present: 'd', future: [] });
  expect(redo(history)).toEqual(closeStep(history));
});

test('the past is bounded', () => {
  let history = begin(named('first'));
  for (let i = 0; i < 1000; i++) history = replace(history, named(`${i}`));
  expect(history.past.length).toBe(300);
  expect(history.past[0]?.guitar.name).toBe('699');
});
