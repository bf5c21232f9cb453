import { FORMULAS, type FormulaId, sayGrounds } from '../../trade/formulas.ts';

/** What a figure opens to: its formulas and the numbers that went in, and how each formula is known; a line for each. */
export interface Sourced {
  readonly formula: string;
  readonly source: string;
}

/** @param inputs the numbers that went in, in a line */
export function sourced(ids: readonly FormulaId[], inputs = ''): Sourced {
  const lines = ids.map((id) => `${FORMULAS[id].name}: ${FORMULAS[id].text}.`);
  return {
    formula: (inputs === '' ? lines : [...lines, `Here: ${inputs}.`]).join('\n'),
    source: ids.map((id) => `${FORMULAS[id].name} (${id}). ${sayGrounds(id)}`).join('\n'),
  };
}
