import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { FOLLOWED } from '../../../src/design/followed.ts';
import { differences } from '../../../src/report/compare/differences.ts';
import { type Changes, designText } from '../../support/change.ts';

const placed = (changes: Changes = {}) => acceptDesign(designText(changes)).design;
const between = (a: Changes, b: Changes) =>
  new Map(differences(placed(a), placed(b)).map((one) => [one.path, one]));

describe('where two designs differ', () => {
  test('a design does not differ from itself, nor from another name', () => {
    expect(differences(placed(), placed({ 'guitar.name': 'Another' }))).toEqual([]);
  });

  test('numbers by how much, choices in words, lists whole', () => {
    const found = between(
      {},
      { 'top.tip': 3.4, 'guitar.hand': 'left', 'strings.notes': ['E4', 'B3', 'G3', 'D3', 'A2', 'D2'] },
    );
    expect([...found.keys()]).toEqual(['guitar.hand', 'strings.notes', 'top.tip']);
    expect(found.get('top.tip')?.by).toBeCloseTo(0.4, 9);
    expect(found.get('guitar.hand')).toMatchObject({ a: 'right-handed', b: 'left-handed', by: undefined });
    expect(found.get('strings.notes')?.b).toEqual(['E4', 'B3', 'G3', 'D3', 'A2', 'D2']);
  });

  test('a solved number as it came out, and a field that isn’t used as none', () => {
    const found = between({}, { 'saddle.depthBy': 'solved', 'top.edge': 'none' });
    expect(found.get('saddle.depth')?.b).toBeCloseTo(
      acceptDesign(designText({ 'saddle.depthBy': 'solved' })).fit.depth.depth,
      3,
    );
    expect(found.get('top.edgeSize')).toMatchObject({ a: 1, b: null, by: undefined });
  });

  test.each(Object.entries(FOLLOWED))('%s that follows an aim as it came out', (follows, path) => {
    const aim = { 'aim.of': 'mass', 'aim.mass': 28, 'aim.follows': follows };
    const { aimed } = acceptDesign(designText(aim));
    expect(between({}, aim).get(path)?.b).toBe(aimed?.value);
  });
});
