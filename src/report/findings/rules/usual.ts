import { above, below, fromTo, said } from '../../said.ts';
import { PRACTICE, type Rule, rule } from '../rule.ts';
import { pinsOf, type Usual, usualRanges } from './usualRanges.ts';

const inRange = ({ usual: [least, most], unit = 'mm', ...one }: Usual): Rule =>
  rule({
    id: one.id,
    about: 'usual',
    watches: `${one.name} lies where it usually does.`,
    judge: ({ accepted }) => {
      if (one.when && !one.when(accepted)) return undefined;
      const value = one.value(accepted);
      const low = below(value, least);
      if (!low && !above(value, most)) return undefined;
      return {
        severity: 'note',
        text: `${one.name} is ${said(value, unit)}, ${low ? 'less' : 'more'} than usual: ${low ? one.low : one.high}.`,
        found: said(value, unit),
        limit: `usually ${fromTo(least, most, unit)}`,
        source: one.source ?? PRACTICE,
        path: one.path,
        place: one.place?.(accepted) ?? [],
        mends: one.mends ?? [one.path],
      };
    },
  });

/** Reamers are sold at these included angles, degrees. */
const TAPERS = [3, 5];

const taper = rule({
  id: 'usual-taper',
  about: 'usual',
  watches: 'The pins’ taper is one that reamers are sold at.',
  judge: ({ accepted }) => {
    const { taper: value } = accepted.design.pins;
    // 0 is a hole left as drilled, for pins that don't taper
    if (value === 0 || TAPERS.some((one) => Math.abs(value - one) < 0.005)) return undefined;
    return {
      severity: 'note',
      text: `The pins’ taper is ${said(value, '°')}: reamers of 3° and 5° are usual, and a pin holds only in a hole of its own taper.`,
      found: said(value, '°'),
      limit: 'usually 3° or 5°',
      source: PRACTICE,
      path: 'pins.taper',
      place: pinsOf(accepted),
      mends: ['pins.taper'],
    };
  },
});

/** One rule for each dimension that is usual within a range: notes all. */
export const usual: readonly Rule[] = [...usualRanges.map(inRange), taper];
