import { FORMULAS, type FormulaId, sayGrounds } from '../../trade/formulas.ts';

/** What a figure opens to: its formulas one after another, and how each is known. */
export interface Sourced {
  readonly formula: string;
  readonly source: string;
}

/** @param inputs the numbers that went in, in a line */
export function sourced(ids: readonly FormulaId[], inputs = ''): Sourced {
  const texts = ids.map((id) => `${FORMULAS[id].text}.`);
  const several = ids.length > 1;
  return {
    formula: [...texts, ...(inputs === '' ? [] : [`Here: ${inputs}.`])].join(' '),
    source: ids
      .map((id) => (several ? `${FORMULAS[id].name} (${id}). ` : `${id}. `) + sayGrounds(id))
      .join(' '),
  };
}
