import { describe, expect, test } from 'vitest';
import { judge, problemsAt } from '../../src/app/store/judge.ts';
import { createAppStore } from '../../src/app/store/store.ts';
import { initialDesign } from '../../src/design/initial.ts';

/** A store with a clock that the test turns. */
function bench() {
  const clock = { at: 0 };
  const store = createAppStore({ text: initialDesign() }, () => clock.at);
  return {
    store,
    wait: (ms: number) => {
      clock.at += ms;
    },
    tip: () => store.getState().history.present.top.tip,
  };
}

test('the initial design can be made', () => {
  const { store } = bench();
  expect(judge(store.getState().history.present).problems).toEqual([]);
  expect(store.getState().lastGood?.design.top.tip).toBe(3);
});

describe('what can’t be made', () => {
  test('is kept as typed, with its problem, beside the last good design', () => {
    const { store, tip } = bench();
    store.edit('top.tip', 2.5);
    store.edit('top.tip', '12 mm');
    const { history, lastGood } = store.getState();
    expect(tip()).toBe('12 mm');
    expect(problemsAt(history.present, 'top.tip')).toMatchObject([
      { code: 'out-of-range', path: 'top.tip', value: '"12 mm"', allowed: '1 to 10 mm' },
    ]);
    expect(problemsAt(history.present, 'top.block')).toEqual([]);
    expect(lastGood?.design.top.tip).toBe(2.5);
    expect(lastGood?.text).not.toBe(history.present);
  });

  test('becomes the last good design again when it is put right', () => {
    const { store } = bench();
    store.edit('top.tip', '');
    store.edit('top.tip', '1/8 in');
    expect(store.getState().lastGood?.text).toBe(store.getState().history.present);
    expect(store.getState().lastGood?.design.top.tip).toBeCloseTo(3.175, 9);
  });

  test('shows a misfit at the field that the curves name', () => {
    const { store } = bench();
    store.edit('top.block', 150);
    expect(problemsAt(store.getState().history.present, 'top.block')).toMatchObject([
      { code: 'does-not-fit' },
    ]);
  });

  test('in a list is a problem of the list’s field', () => {
    const { store } = bench();
    store.edit('strings.diameters', ['0.012 in', 'thin', '0.024 in', '0.032 in', '0.042 in', '0.053 in']);
    const [problem] = problemsAt(store.getState().history.present, 'strings.diameters');
    expect(problem?.path).toBe('strings.diameters.2');
  });

  test('begins with the good design that was kept beside it', () => {
    const good = initialDesign();
    const text = { ...good, top: { ...good.top, tip: 99 } };
    expect(createAppStore({ text, good }).getState().lastGood?.text).toBe(good);
    expect(createAppStore({ text }).getState().lastGood).toBeUndefined();
  });
});

test('a problem list is the same object while the document is, so that nothing draws itself anew', () => {
  const { store } = bench();
  store.edit('top.tip', 99);
  const { present } = store.getState().history;
  expect(problemsAt(present, 'top.tip')).toBe(problemsAt(present, 'top.tip'));
  expect(problemsAt(present, 'top.block')).toBe(problemsAt(present, 'pins.drill'));
});

test('typing is one step, and undo brings back text and good design together', () => {
  const { store, wait, tip } = bench();
  for (const typed of ['', '1', '1/', '1/8', '1/8 ', '1/8 i', '1/8 in']) {
    store.edit('top.tip', typed);
    wait(200);
  }
  store.closeStep();
  store.undo();
  expect(tip()).toBe(3);
  expect(store.getState().lastGood?.text).toBe(store.getState().history.present);
  store.redo();
  expect(tip()).toBe('1/8 in');
});

test('a dragged value is one step', () => {
  const { store, wait, tip } = bench();
  store.edit('top.tip', 4);
  store.hold('top.tip');
  for (const typed of [4.1, 4.2, 4.3]) {
    wait(5000);
    store.edit('top.tip', typed);
  }
  store.closeStep();
  store.undo();
  expect(tip()).toBe(4);
});

test('typing what stands there already is no change', () => {
  const { store } = bench();
  store.edit('top.tip', 3);
  expect(store.getState().history.past).toEqual([]);
});

test('another design is a step that can be undone', () => {
  const { store } = bench();
  const first = store.getState().history.present;
  const other = { ...first, guitar: { ...first.guitar, name: 'Heron' } };
  store.replaceDesign(other);
  expect(store.getState().history.present).toBe(other);
  store.undo();
  expect(store.getState().history.present).toBe(first);
});

test('a selection opens its group, and a list’s entry selects its field', () => {
  const { store } = bench();
  store.select('pins.drill');
  expect(store.getState().session.selected).toBe('pins.drill');
  expect([...store.getState().session.openGroups]).toEqual(['top', 'pins']);
  store.callTo('strings.diameters.3');
  expect(store.getState().session).toMatchObject({
    selected: 'strings.diameters',
    call: { path: 'strings.diameters', count: 1 },
    figuresInFront: false,
  });
  store.select(undefined);
  expect(store.getState().session.selected).toBeUndefined();
});

test('a path that names no field changes and selects nothing', () => {
  const { store } = bench();
  const before = store.getState().history;
  store.edit('top.nonsense', 3);
  store.edit('nonsense', 3);
  store.callTo('version');
  expect(store.getState().history).toBe(before);
  expect(store.getState().session.call.count).toBe(0);
});

test('a field whose group is closed is let go of, one of another group is not', () => {
  const { store } = bench();
  store.select('saddle.depth');
  store.toggleGroup('top');
  expect(store.getState().session.selected).toBe('saddle.depth');
  store.toggleGroup('saddle');
  expect(store.getState().session.selected).toBeUndefined();
  expect(store.getState().session.openGroups.has('saddle')).toBe(false);
  store.toggleGroup('saddle');
  expect(store.getState().session.openGroups.has('saddle')).toBe(true);
});
