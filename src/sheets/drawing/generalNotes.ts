import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Units } from '../lengthText.ts';

/** What holds for the whole drawing. */
export function generalNotes({ curves: { edge } }: AcceptedDesign, units: Units): readonly string[] {
  return [
    units === 'mm'
      ? 'Dimensions in millimetres, finished sizes: no sanding allowance in them.'
      : 'Dimensions in inches, finished sizes: no sanding allowance in them. Fractions are exact, decimals are rounded to 0.001.',
    'General tolerance ISO 2768-m: up to 6 ±0.1, to 30 ±0.2, to 120 ±0.3, to 400 ±0.5 mm. Own tolerances stand beside their dimensions.',
    'Sections A–A and B–B are on the next sheet. Outline and top are symmetric about the centre line.',
    'Thickness is measured on the centre line, at the slot’s middle, from the glue plane to the uncut top.',
    ...(edge.kind === 'none' ? ['Top edges left square.'] : []),
  ];
}
