import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { enclosedArea } from '../../models/curves/chain.ts';
import { keepGuitar } from '../../src/app/starters/keepGuitar.ts';
import { outlinePath } from '../../src/app/starters/outlinePath.ts';
import { loadStarters } from '../../src/app/starters/starters.ts';
import { designText } from '../support/change.ts';

const read = async (file: string): Promise<unknown> =>
  JSON.parse(await readFile(`public/starters/${file}`, 'utf8'));

test('every starter of the index can be made, and is told apart by its name', async () => {
  const starters = await loadStarters(read);
  expect(starters.length).toBeGreaterThanOrEqual(6);
  expect(new Set(starters.map(({ name }) => name)).size).toBe(starters.length);
  for (const { name, about, curves } of starters) {
    expect(about, name).not.toBe('');
    expect(enclosedArea(curves.outline), name).toBeGreaterThan(1000);
  }
});

test('a starter can be taken on one’s own guitar: its bridge and name, the other’s guitar, action and strings', async () => {
  const [starter] = await loadStarters(read);
  if (!starter) throw new Error('no starters');
  const mine = designText({
    'guitar.scale': '24.9 in',
    'guitar.hand': 'left',
    'strings.spread': 53.5,
    'action.treble': 1.7,
  });
  const taken = keepGuitar(starter.text, mine);
  expect(taken.guitar).toEqual({ ...mine.guitar, name: starter.name });
  expect(taken.action).toEqual(mine.action);
  expect(taken.strings).toEqual(mine.strings);
  const bridge = { guitar: 0, action: 0, strings: 0 };
  expect({ ...taken, ...bridge }).toEqual({ ...starter.text, ...bridge });
});

test('a starter that is missing says which', async () => {
  const broken = async (file: string) => {
    if (file !== 'index.json') throw new Error(`${file} is not beside the page (404)`);
    return [{ file: 'gone.json', name: 'Gone', about: '' }];
  };
  await expect(loadStarters(broken)).rejects.toThrow('gone.json');
});

test('an outline’s path goes round and closes: lines and arcs with y turned down', () => {
  // a quarter of a disc of radius 10, counter-clockwise
  const path = outlinePath([
    { kind: 'line', from: [0, 0], to: [10, 0] },
    { kind: 'arc', from: [10, 0], to: [0, 10], centre: [0, 0], radius: 10, turn: 1 },
    { kind: 'line', from: [0, 10], to: [0, 0] },
  ]);
  expect(path).toBe('M0 0L10 0A10 10 0 0 0 0 -10L0 0Z');
});
