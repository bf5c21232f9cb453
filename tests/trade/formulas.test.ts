import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Formula } from '../../src/trade/formula.ts';
import { FORMULAS, type FormulaId, sayGrounds } from '../../src/trade/formulas.ts';

const room = 'src/trade';
const files = readdirSync(room, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
const IDS = Object.keys(FORMULAS) as FormulaId[];

/** Ids such as `S2` in the docstrings of a file: notes like B3 stand in the program's own text, not in docstrings. */
function idsIn(source: string): readonly string[] {
  const comments = source.match(/\/\*\*[\s\S]*?\*\//g) ?? [];
  return comments.flatMap((comment) => comment.match(/\b[SIBW]\d\b/g) ?? []);
}

test('the docstrings of a file are found, its notes are not', () => {
  expect(idsIn("/** T, S2: a note. */ const b = ['B3', 'S9'];")).toEqual(['S2']);
});

test('every formula that a docstring of the trade names is in the table', () => {
  const named = new Set<string>();
  for (const file of files) {
    for (const id of idsIn(readFileSync(path.join(room, file), 'utf8'))) {
      named.add(id);
      expect(IDS, `${file} names ${id}`).toContain(id);
    }
  }
  expect([...named].sort()).toEqual(
    expect.arrayContaining(['B1', 'B2', 'B3', 'B4', 'B6', 'B7', 'B8', 'I2', 'I3', 'I4', 'S2', 'S7', 'W5']),
  );
});

describe('how each formula is known is said as it is', () => {
  test.each(IDS)('%s', (id) => {
    const formula: Formula = FORMULAS[id];
    const said = sayGrounds(id);
    expect(formula.grounds.length, 'it stands on something').toBeGreaterThan(0);
    for (const { known, what } of formula.grounds) {
      expect(said).toContain(what);
      if (known === 'memory')
        expect(said, 'memory is no source').toContain(`From memory, not looked up: ${what}`);
      if (known === 'practice') expect(said).toContain(`Common practice: ${what}`);
    }
    const sources = formula.grounds.filter(({ known }) => known === 'read' || known === 'quoted').length;
    expect(said.match(/Source,/g)?.length ?? 0, 'only what was read or quoted is called a source').toBe(
      sources,
    );
  });
});
