import type { Design } from '../../design/design.ts';
import { fixed } from '../../report/said.ts';
import type { Fit, SolvedNumber } from '../../trade/fit/placeDesign.ts';
import type { Figure } from '../figures/figure.ts';
import { sourced } from './sourced.ts';

/** Where the slot lies and at what angle, and by the softest ends beside it. */
export function slotFigures({ guitar, saddle, action }: Design, { slot, solved }: Fit): readonly Figure[] {
  const { line, least } = slot;
  const { scale } = guitar;
  const laid = saddle.line === 'squares' ? 'least squares' : 'smallest largest error';
  const tuned =
    action.nut === 'solved' || saddle.rule === 'frets' ? 'frets 1 to 12' : 'the 12th fret in tune';
  const inputs = `${tuned}, laid by ${laid}, α ${saddle.firmEnds}`;
  const nutToSlot = (label: string, setback: number): Figure => ({
    label,
    value: fixed(scale + setback, 2),
    unit: 'mm',
    ...sourced(['I4'], `scale length ${fixed(scale, 2)} + set-back ${fixed(setback, 2)} mm; ${inputs}`),
    path: 'saddle.setback',
  });
  return [
    {
      ...nutToSlot('Nut to slot’s middle, centre line', line.centreMm),
      ...beside(solved['saddle.setback'], (n) => `${fixed(scale + n, 2)} mm`),
    },
    nutToSlot('… at the first string', line.trebleMm),
    nutToSlot('… at the last string', line.bassMm),
    {
      label: 'Slot angle',
      value: `${fixed(line.angleDeg, 2)}°`,
      unit: '',
      ...sourced(['I4', 'I2'], inputs),
      ...beside(solved['saddle.angle'], (n) => `${fixed(n, 2)}°`),
      path: 'saddle.angle',
    },
    {
      label: 'With α = 1, a lower bound',
      value: `${fixed(scale + least.centreMm, 2)} mm, ${fixed(least.angleDeg, 2)}°`,
      unit: '',
      ...sourced(
        ['I4'],
        `the same strings with ends that clamp least: set-back ${fixed(least.trebleMm, 2)}, ${fixed(least.centreMm, 2)} and ${fixed(least.bassMm, 2)} mm at the first string, the centre line and the last`,
      ),
      path: 'saddle.firmEnds',
    },
  ];
}

/** What the guitar asks for, beside a number that is set by hand. */
function beside({ by, solved }: SolvedNumber, say: (solved: number) => string): Partial<Figure> {
  return by === 'set' ? { note: `set by hand; solved: ${say(solved)}` } : {};
}
