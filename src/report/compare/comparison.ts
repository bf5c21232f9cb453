import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { type Headline, headlines } from '../headlines.ts';
import type { PartFigures } from '../partFigures.ts';
import { type Difference, differences } from './differences.ts';

/** One number of two designs. */
export interface Pair extends Omit<Headline, 'value'> {
  readonly a: number;
  readonly b: number;
  /** b as a share of a; undefined where a is 0. */
  readonly share: number | undefined;
}

/** Two designs side by side. */
export interface Comparison {
  readonly differences: readonly Difference[];
  readonly figures: readonly Pair[];
}

/** A design and what it comes to. */
export interface Weighed {
  readonly accepted: AcceptedDesign;
  readonly figures: PartFigures;
}

export function comparison(a: Weighed, b: Weighed): Comparison {
  const others = new Map(headlines(b.figures).map((headline) => [headline.id, headline.value]));
  return {
    differences: differences(a.accepted.design, b.accepted.design),
    figures: headlines(a.figures).map(({ value, ...rest }) => {
      const other = others.get(rest.id) as number;
      return { ...rest, a: value, b: other, share: value === 0 ? undefined : other / value };
    }),
  };
}
