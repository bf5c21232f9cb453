import { expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { LOAD_CAUTION } from '../../src/trade/loadCaution.ts';

test('it says what load figures are for, what they are not, and what comes first', () => {
  for (const must of [/compare designs/, /reference design/, /guarantee nothing/, /[Ll]ocal rules/, /trials/])
    expect(LOAD_CAUTION).toMatch(must);
  expect(LOAD_CAUTION).toMatch(/eye protection.*slacken/);
});

test('strings pull about what it says: the initial design’s light set', () => {
  const said = Number(LOAD_CAUTION.match(/about (\d+) N/)?.[1]);
  const { fit } = acceptDesign(initialDesign());
  const pull = fit.strings.reduce((sum, { tensionN }) => sum + tensionN, 0);
  expect(Math.abs(pull / said - 1), `${pull} N`).toBeLessThan(0.05);
});
