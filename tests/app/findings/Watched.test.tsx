import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Watched } from '../../../src/app/findings/Watched.tsx';
import { RULES } from '../../../src/report/findings/rules.ts';

test('every rule says what it watches, in a sentence, in a list that is closed at first', () => {
  const shown = renderToStaticMarkup(<Watched />);
  expect(shown).toMatch(/^<details class="watched"><summary>What is watched/);
  expect(shown.match(/<li>/g)).toHaveLength(RULES.length);
  for (const { id, watches } of RULES) {
    expect(watches, id).toMatch(/^[A-Z].*\.$/);
    expect(shown, id).toContain(`<li>${watches}</li>`);
  }
});
