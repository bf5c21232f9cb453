import { afterEach, describe, expect, test, vi } from 'vitest';
import { differenceRows } from '../../../src/app/compare/differenceRows.ts';
import { readReferenceFile } from '../../../src/app/compare/openReference.ts';
import { referenceOf, USUAL } from '../../../src/app/compare/referenceOf.ts';
import { takeReference } from '../../../src/app/compare/takeReference.ts';
import { rememberedReference, rememberReference } from '../../../src/app/keep/reference.ts';
import { createAppStore } from '../../../src/app/store/store.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { writeDesign } from '../../../src/files/designFile.ts';
import { differences } from '../../../src/report/compare/differences.ts';
import { change } from '../../support/change.ts';
import { someFits } from '../fit/fitOf.ts';

/** Twelve strings, none of them measured. */
const TWELVE = {
  ...someFits['twelve in pairs, two rows'],
  'strings.notes': ['E4', 'E4', 'B3', 'B3', 'G3', 'G4', 'D3', 'D4', 'A2', 'A3', 'E2', 'E3'],
};
const text = (changes = {}) => change(initialDesign(), changes);

/** What the browser keeps for a page. */
function storage(): Map<string, string> {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  });
  return kept;
}
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the reference design', () => {
  test('is the usual bridge until another is taken, which is remembered', () => {
    const kept = storage();
    expect(rememberedReference()).toBeUndefined();
    expect(referenceOf(undefined).name).toBe('usual bridge, invented');
    const store = createAppStore({ text: text() });
    const plover = { name: 'Plover', text: text({ 'top.tip': 4 }) };
    takeReference(store, plover);
    expect(referenceOf(store.getState().session.reference)).toMatchObject({
      name: 'Plover',
      accepted: { design: { top: { tip: 4 } } },
    });
    expect(rememberedReference()).toEqual(plover);
    expect(kept.size).toBe(1);
    expect(store.getState().history.past, 'the bench stays as it is').toHaveLength(0);
  });

  test.each([
    ['characters that are no JSON', '{'],
    ['nothing', 'null'],
    ['no name', JSON.stringify({ text: initialDesign() })],
    ['no design', JSON.stringify({ name: 'Plover', text: { format: 'other' } })],
    ['a design that can’t be made', JSON.stringify({ name: 'Plover', text: text({ 'top.tip': 'thin' }) })],
  ])('%s is forgotten', (_, stored) => {
    const kept = storage();
    rememberReference(USUAL);
    const [key] = [...kept.keys()];
    kept.set(key as string, stored);
    expect(rememberedReference()).toBeUndefined();
    expect(kept.size, 'and not read again').toBe(0);
  });

  test('a browser that refuses storage is compared with the usual bridge', () => {
    vi.stubGlobal('localStorage', undefined);
    expect(rememberedReference()).toBeUndefined();
    expect(() => rememberReference(USUAL)).not.toThrow();
  });

  test('a file is taken by its design’s name, and refused where it has no figures', () => {
    const named = writeDesign(text({ 'guitar.name': 'Heron' }));
    expect(readReferenceFile('a.json', named)).toMatchObject({
      name: 'Heron',
      text: { guitar: { name: 'Heron' } },
    });
    expect(readReferenceFile('a.json', 'words')).toMatchObject({
      trouble: expect.stringContaining('a.json'),
    });
    expect(readReferenceFile('a.json', writeDesign(text({ 'top.tip': 'thin' })))).toEqual({
      trouble: 'a.json can’t be made as it is: open it and mend “Top, wing tip” first.',
    });
  });
});

describe('differences as shown', () => {
  const rows = (changes = {}) =>
    differenceRows(differences(acceptDesign(text()).design, acceptDesign(text(changes)).design));

  test('numbers have as many decimals each, and by how much', () => {
    expect(rows()).toEqual([]);
    expect(rows({ 'top.tip': 3.25 }).find(({ path }) => path === 'top.tip')).toEqual({
      path: 'top.tip',
      label: 'Top, wing tip',
      unit: 'mm',
      reference: '3.00',
      here: '3.25',
      by: '+0.25',
    });
    expect(rows({ 'top.tip': 2 }).find(({ path }) => path === 'top.tip')).toMatchObject({
      reference: '3',
      here: '2',
      by: '−1',
    });
  });

  test('choices and lists are told in words, and what isn’t used says so', () => {
    const open = rows({ 'top.edge': 'none' });
    const twelve = rows(TWELVE);
    expect(twelve.map(({ path }) => path)).not.toContain('action.cents');
    expect(twelve.find(({ path }) => path === 'strings.notes')?.here).toBe(TWELVE['strings.notes'].join(' '));
    expect(open.find(({ path }) => path === 'top.edge')).toMatchObject({ by: undefined });
    expect(open.find(({ path }) => path === 'top.edgeSize')).toMatchObject({
      here: 'not used',
      by: undefined,
    });
  });
});
