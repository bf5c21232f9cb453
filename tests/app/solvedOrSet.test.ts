import { describe, expect, test } from 'vitest';
import { type Place, placeOf } from '../../src/app/store/fieldAt.ts';
import { judge, problemsAt } from '../../src/app/store/judge.ts';
import { choiceOf, howFound, numberOf, setByHand, solvedAgain } from '../../src/app/store/solvedOrSet.ts';
import { createAppStore } from '../../src/app/store/store.ts';
import { initialDesign } from '../../src/design/initial.ts';
import type { SolvablePath } from '../../src/trade/fit/placeDesign.ts';
import { change, typedAt } from '../support/change.ts';

const place = (path: string) => placeOf(path) as Place;
const PATHS = ['saddle.angle', 'saddle.setback', 'saddle.depth', 'top.thickness', 'top.crownRadius'] as const;

const CONICAL = { 'guitar.fretboard': 'conical' };
/** A thickness set by hand leaves the showing to be solved. */
const THIN = { 'top.thicknessBy': 'set', 'top.thickness': 8.7 };

const fitOf = (text: Parameters<typeof judge>[0]) => {
  const { accepted, problems } = judge(text);
  expect(problems).toEqual([]);
  if (!accepted) throw new Error('this design can be made');
  return accepted;
};

describe('a solved number set by hand', () => {
  test.each<[SolvablePath, Record<string, unknown>]>([
    ...PATHS.map((path): [SolvablePath, Record<string, unknown>] => [path, {}]),
    ['top.crownRadius', CONICAL],
    ['saddle.showing', THIN],
    ['saddle.angle', { 'saddle.line': 'largest' }],
    ['saddle.setback', { 'saddle.line': 'largest', 'guitar.hand': 'left' }],
  ])('%s keeps the very number: nothing in the part moves (%o)', (path, changes) => {
    const text = change(initialDesign(), changes);
    const before = fitOf(text);
    const { solved, by } = before.fit.solved[path];
    expect(by).toBe('solved');
    const set = setByHand(text, place(path), before.fit.solved);
    expect(typedAt(set, path)).toBe(solved);
    const after = fitOf(set);
    expect(after.fit.solved[path]).toMatchObject({ used: solved, by: 'set' });
    expect(howFound(set, place(path))).toBe('set');
    // solved numbers are rounded to a ten-thousandth: a set-back set by hand turns the slot's solved angle by as little,
    // 0.0002° at most, which is 0.0001 mm at the slot's ends
    for (const other of Object.keys(before.fit.solved) as SolvablePath[]) {
      const moved = after.fit.solved[other].used - before.fit.solved[other].used;
      expect(Math.abs(moved), `${other} moves by ${moved}`).toBeLessThanOrEqual(2.01e-4);
    }
  });

  test.each(PATHS)('%s goes back to solved, and the number set by hand stays in the file', (path) => {
    const text = initialDesign();
    const set = setByHand(text, place(path), fitOf(text).fit.solved);
    const back = solvedAgain(set, place(path));
    expect(howFound(back, place(path))).toBe('solved');
    expect(typedAt(back, path)).toBe(typedAt(set, path));
    expect(fitOf(back).fit.solved).toEqual(fitOf(text).fit.solved);
  });

  test('where nothing was ever solved keeps what was last typed', () => {
    const text = change(initialDesign(), { 'saddle.angle': '3.5°' });
    const set = setByHand(text, place('saddle.angle'), undefined);
    expect(set.saddle).toMatchObject({ angle: '3.5°', angleBy: 'set' });
  });
});

test('one press is one step: undo and redo bring back number and choice together, and lose nothing', () => {
  const store = createAppStore({ text: initialDesign() });
  store.edit('saddle.angle', '3.5°');
  const typed = store.getState().history.present;
  const solved = store.getState().lastGood?.fit.solved;
  store.replaceDesign(setByHand(typed, place('saddle.angle'), solved));
  const set = store.getState().history.present;
  expect(set.saddle.angle).toBe(solved?.['saddle.angle'].solved);
  store.undo();
  expect(store.getState().history.present).toBe(typed);
  expect(store.getState().history.present.saddle).toMatchObject({ angle: '3.5°', angleBy: 'solved' });
  store.redo();
  expect(store.getState().history.present).toBe(set);
  store.edit('saddle.angle', 4);
  store.undo();
  expect(store.getState().history.present.saddle.angle).toBe(set.saddle.angle);
});

test('the showing is wanted while the thickness is solved, else solved or set', () => {
  const text = initialDesign();
  const showing = place('saddle.showing');
  expect(howFound(text, showing)).toBe('wanted');
  expect(howFound(change(text, THIN), showing)).toBe('solved');
  expect(howFound(change(text, { ...THIN, 'saddle.showingBy': 'set' }), showing)).toBe('set');
  expect(howFound(text, place('saddle.slotWidth'))).toBeUndefined();
});

test('number and choice know each other, and the number’s row stands for both', () => {
  expect(choiceOf(place('top.crownRadius'))?.path).toBe('top.crown');
  expect(numberOf(place('saddle.angleBy'))?.path).toBe('saddle.angle');
  expect(numberOf(place('saddle.filed'))).toBeUndefined();
  const store = createAppStore({ text: initialDesign() });
  store.callTo('top.crown');
  expect(store.getState().session).toMatchObject({
    selected: 'top.crownRadius',
    call: { path: 'top.crownRadius' },
  });
});

test('several fields typed together are one step, and quick typing at one path joins it', () => {
  const clock = { at: 0 };
  const store = createAppStore({ text: initialDesign() }, () => clock.at);
  const before = store.getState().history.present;
  for (const gauge of ['0.01', '0.013', '0.013 in']) {
    store.revise('strings.diameters', (text) =>
      change(text, { 'strings.diameters': [gauge], 'strings.cores': [gauge] }),
    );
    clock.at += 200;
  }
  store.revise('strings.diameters', (text) => text);
  expect(store.getState().history.past).toEqual([before]);
  store.undo();
  expect(store.getState().history.present).toBe(before);
});

test('a solved number that can’t be is a problem at its own path, beside the last good design’s', () => {
  const store = createAppStore({ text: initialDesign() });
  const good = store.getState().lastGood?.fit.solved['top.thickness'].solved;
  store.edit('action.planeHeight', 19);
  const [problem] = problemsAt(store.getState().history.present, 'top.thickness');
  expect(problem).toMatchObject({ code: 'does-not-fit', value: expect.stringContaining('as solved') });
  expect(store.getState().lastGood?.fit.solved['top.thickness'].solved).toBe(good);
});
