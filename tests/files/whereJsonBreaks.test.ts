import fc from 'fast-check';
import { expect, test } from 'vitest';
import { whereJsonBreaks } from '../../src/files/whereJsonBreaks.ts';

function isJson(characters: string): boolean {
  try {
    JSON.parse(characters);
    return true;
  } catch {
    return false;
  }
}

test('no place is named in any JSON', () => {
  const json = fc.tuple(fc.json(), fc.constantFrom('', ' ', '\n\t'));
  fc.assert(
    fc.property(json, ([text, space]) => whereJsonBreaks(space + text + space) === undefined),
    { seed: 20, numRuns: 300 },
  );
});

test('it agrees with the engine on what is JSON when characters are taken out, put in or changed', () => {
  const hurt = fc
    .tuple(fc.json(), fc.nat(), fc.nat(2), fc.constantFrom(...'{}[],:"\\0159.eE+-tnul \n\u0001x'.split('')))
    .map(([text, at, taken, put]) => {
      const place = at % (text.length + 1);
      return text.slice(0, place) + put + text.slice(place + taken);
    });
  fc.assert(
    fc.property(hurt, (text) => (whereJsonBreaks(text) === undefined) === isJson(text)),
    { seed: 21, numRuns: 3000 },
  );
});

test('deep nesting is no trouble', () => {
  expect(whereJsonBreaks('['.repeat(20_000))).toEqual({ line: 1, column: 20_001 });
});
